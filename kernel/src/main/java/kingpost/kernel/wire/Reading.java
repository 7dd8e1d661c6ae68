package kingpost.kernel.wire;

import kingpost.kernel.message.Message;

/** What received frames turn out to be. */
public sealed interface Reading {

    /** A message of somebody who knows the key. */
    record Accepted(Message message) implements Reading { }

    /** Frames that are dropped: nothing is executed, nothing is answered. */
    record Refused(Reason reason) implements Reading { }

    /** Why frames are dropped, in the words of the log. */
    enum Reason {
        TOO_LARGE("larger than the limit"),
        NO_DELIMITER("no delimiter frame"),
        TOO_FEW_FRAMES("fewer than five frames after the delimiter"),
        UNSIGNED("not signed"),
        WRONG_SIGNATURE("wrong signature"),
        REPLAYED("signature seen before"),
        NOT_TEXT("not UTF-8"),
        NOT_JSON("not a JSON object in one of the four parts"),
        NO_TYPE("no usable header");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
