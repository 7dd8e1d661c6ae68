package kingpost.notebook;

import java.util.List;

/** What is in scope in a fresh cell. */
public final class Preload {

    private static final List<String> IMPORTS = List.of(
            "import java.io.*;",
            "import java.math.*;",
            "import java.nio.file.*;",
            "import java.time.*;",
            "import java.util.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import kingpost.notebook.*;",
            "import kingpost.units.Quantity;",
            "import static kingpost.units.StructuralUnits.*;",
            "import static kingpost.notebook.UnitWords.*;",
            "import static kingpost.notebook.Notebook.*;");

    private Preload() {
    }

    /** Import declarations, in order; later ones do not hide earlier ones. */
    public static List<String> imports() {
        return IMPORTS;
    }
}
