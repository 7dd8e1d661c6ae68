package kingpost.kernel.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.session.KernelDescription;

/** What a notebook that ran here says about its kernel and language. */
final class KernelMetadata {

    private static final Map<String, Object> SPEC = Map.of("name", Notebook.KERNEL, "display_name", "Kingpost",
            "language", "java");

    private KernelMetadata() {
    }

    /** The notebook with what the kernel would tell a front end, but for the Java version: any will do to run it. */
    static Notebook on(Notebook notebook) {
        Map<String, Object> language = new LinkedHashMap<>(KernelDescription.language());
        language.remove("version");
        return notebook.withMetadata("kernelspec", SPEC).withMetadata("language_info", language);
    }
}
