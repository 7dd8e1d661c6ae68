package kingpost.kernel.page;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.kernel.document.Trees;

/**
 * Finds pictures that can be put into the page itself: attachments of the cell, files beside the notebook, and data
 * that is in the text already. A picture elsewhere is not fetched.
 */
final class Images {

    private static final Map<String, String> TYPES = Map.of("png", "image/png", "jpg", "image/jpeg", "jpeg",
            "image/jpeg", "gif", "image/gif", "webp", "image/webp", "svg", "image/svg+xml");
    private static final Pattern DATA = Pattern.compile(
            "data:image/(?:png|jpeg|gif|webp|svg\\+xml);base64,[A-Za-z0-9+/=\\s]+", Pattern.CASE_INSENSITIVE);
    private static final Pattern ATTACHMENT = Pattern.compile("attachment:(.+)");
    private static final long MOST_BYTES = 8L << 20;

    private final Optional<Path> folder;
    private final Map<String, Object> attachments;

    /**
     * @param folder      where the notebook lies
     * @param attachments the cell's attachments, file name to bundle
     */
    Images(Optional<Path> folder, Map<String, Object> attachments) {
        this.folder = folder;
        this.attachments = attachments;
    }

    /** No attachments and no folder. */
    static Images none() {
        return new Images(Optional.empty(), Map.of());
    }

    /** A data URI of the picture that {@code source} names. */
    Optional<String> find(String source) {
        if (DATA.matcher(source).matches()) {
            return Optional.of(source.replaceAll("\\s", ""));
        }
        Matcher attachment = ATTACHMENT.matcher(source);
        if (attachment.matches()) {
            return attached(decoded(attachment.group(1)));
        }
        return source.matches("[A-Za-z][A-Za-z0-9+.-]*:.*|//.*") ? Optional.empty() : beside(decoded(source));
    }

    static String dataUri(String type, String text) {
        return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    }

    private Optional<String> attached(String name) {
        Map<String, Object> bundle = Trees.map(attachments, name);
        return bundle.keySet().stream().filter(TYPES::containsValue).findFirst().map(type -> {
            String content = Trees.joined(bundle, type);
            return type.equals("image/svg+xml") && content.contains("<") ? dataUri(type, content)
                    : "data:" + type + ";base64," + content.replaceAll("\\s", "");
        });
    }

    private Optional<String> beside(String name) {
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
        if (type == null || folder.isEmpty()) {
            return Optional.empty();
        }
        try {
            Path root = folder.get().toRealPath();
            Path file = root.resolve(name).toRealPath();
            if (!file.startsWith(root) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            return Optional.of("data:" + type + ";base64," + Base64.getEncoder().encodeToString(Files.readAllBytes(file)));
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static String decoded(String name) {
        try {
            return URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return name;
        }
    }
}
