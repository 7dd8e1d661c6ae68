package kingpost.kernel.session;

import java.util.Optional;
import java.util.Set;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Reply;

/**
 * How one type of request is answered.
 *
 * @param channels  where it may arrive
 * @param replyType type of its reply; empty when it has none
 * @param answer    does it
 */
record Handler(Set<Channel> channels, Optional<String> replyType, Answer answer) {

    Handler {
        channels = Set.copyOf(channels);
    }

    /** Answers a request; busy and idle around it are said elsewhere. */
    @FunctionalInterface
    interface Answer {
        /**
         * @throws kingpost.kernel.message.ContentException when the request's content cannot be used
         */
        Optional<Reply> to(Exchange exchange);
    }
}
