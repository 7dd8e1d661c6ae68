package kingpost.kernel.cli;

/** A form in which a run's result is written. */
enum Form {
    HTML("Page", ".html"),
    PDF("PDF", ".pdf"),
    MD("Markdown", ".md"),
    IPYNB("Notebook", ".ipynb");

    private final String word;
    private final String ending;

    Form(String word, String ending) {
        this.word = word;
        this.ending = ending;
    }

    /** What a person calls it. */
    String word() {
        return word;
    }

    /** How the names of its files end. */
    String ending() {
        return ending;
    }
}
