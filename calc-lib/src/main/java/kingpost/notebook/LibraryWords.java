package kingpost.notebook;

/** Words that bring a library into the notebook; what follows in the cell can use it. */
public final class LibraryWords {

    private LibraryWords() {
    }

    /**
     * Adds a library, and what it needs, from Maven repositories: {@code library("org.example:tables:1.2")}.
     *
     * @param coordinates {@code group:artifact:version}, or {@code group:artifact:extension:classifier:version}
     */
    public static void library(String coordinates) {
        CellDisplay.sink().library("coordinates", coordinates);
    }

    /**
     * Adds a jar or a folder of class files: {@code libraryFile("lib/tables.jar")}.
     *
     * @param path absolute, or from the folder in which the notebook runs
     */
    public static void libraryFile(String path) {
        CellDisplay.sink().library("file", path);
    }
}
