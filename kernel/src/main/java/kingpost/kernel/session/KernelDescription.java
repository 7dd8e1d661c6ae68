package kingpost.kernel.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Reply;

/**
 * What the kernel says about itself.
 *
 * <p>Source: messaging protocol 5.5, "Kernel info" and "Connect".
 *
 * @param version the product's version
 * @param ports   the five ports by the protocol's names; may be empty
 */
public record KernelDescription(String version, Map<String, Integer> ports) {

    public KernelDescription {
        ports = Map.copyOf(ports);
    }

    Reply info() {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("status", "ok");
        fields.put("protocol_version", Header.PROTOCOL_VERSION);
        fields.put("implementation", "kingpost");
        fields.put("implementation_version", version);
        fields.put("language_info", language());
        fields.put("banner", "Kingpost " + version + " on Java " + Runtime.version()
                + "\nTrusses worked joint by joint, checked and drawn. Begin with Truss.named(\"...\").");
        fields.put("help_links", List.of());
        fields.put("supported_features", List.of());
        return new Reply.Plain("kernel_info_reply", fields);
    }

    /** The language of the cells, as {@code language_info} tells it. */
    public static Map<String, Object> language() {
        Map<String, Object> language = new LinkedHashMap<>();
        language.put("name", "java");
        language.put("version", Runtime.version().toString());
        language.put("mimetype", "text/x-java");
        language.put("file_extension", ".jsh");
        language.put("pygments_lexer", "java");
        language.put("codemirror_mode", "text/x-java");
        language.put("nbconvert_exporter", "script");
        return language;
    }
}
