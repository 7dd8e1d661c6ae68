package kingpost.kernel.session;

import java.util.Collection;
import java.util.Map;
import kingpost.kernel.display.MimeBundle;

/** Replaces a bundle that is too large for any front end by the start of its plain text and a notice. */
final class BundleCap {

    private static final int HEAD_CHARS = 2_000;

    private BundleCap() { }

    static MimeBundle within(OutputLimits limits, MimeBundle bundle) {
        long chars = size(bundle.data());
        return chars <= limits.bundleChars() ? bundle : MimeBundle.plain(head(bundle) + "\n[This value has " + chars
                + " characters and is not shown whole; the limit is " + limits.bundleChars()
                + ", the system property " + OutputLimits.BUNDLE_PROPERTY + ".]");
    }

    private static String head(MimeBundle bundle) {
        String text = String.valueOf(bundle.data().getOrDefault(MimeBundle.PLAIN, ""));
        if (text.length() <= HEAD_CHARS) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(HEAD_CHARS - 1)) ? HEAD_CHARS - 1 : HEAD_CHARS;
        return text.substring(0, end);
    }

    private static long size(Object tree) {
        if (tree instanceof CharSequence text) {
            return text.length();
        }
        if (tree instanceof Map<?, ?> map) {
            return map.entrySet().stream().mapToLong(e -> size(e.getKey()) + size(e.getValue())).sum();
        }
        if (tree instanceof Collection<?> items) {
            return items.stream().mapToLong(BundleCap::size).sum();
        }
        return 8;
    }
}
