package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.ImportSnippet;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import kingpost.kernel.display.MimeBundle;

/** Signature and documentation of what stands at a cursor; of our own words an example as well. */
final class Inspection {

    private static final int MOST = 12;
    private static final int MOST_EXAMPLES = 3;

    private final Shell shell;
    private final SourceComments ours;
    private final Examples examples;

    Inspection(Shell shell, SourceComments ours, Examples examples) {
        this.shell = shell;
        this.ours = ours;
        this.examples = examples;
    }

    /** The text for the reader; JShell's lock is held. */
    Optional<MimeBundle> at(String code, int cursor, int detail) {
        int end = wordEnd(code, cursor);
        Statements.Current current = Statements.last(shell.analysis(), code.substring(0, end));
        List<Documentation> found = documentation(current.code());
        if (found.isEmpty() && !current.declarations().isEmpty()) {
            found = documentation(current.declarations() + "\n" + current.code());
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(bundle(found, detail));
    }

    private static int wordEnd(String code, int cursor) {
        int end = cursor;
        while (end < code.length() && Character.isJavaIdentifierPart(code.codePointAt(end))) {
            end += Character.charCount(code.codePointAt(end));
        }
        return end;
    }

    /** A bare method name is known to JShell only with its parenthesis. */
    private List<Documentation> documentation(String code) {
        List<Documentation> found = shell.analysis().documentation(code, code.length(), true);
        boolean word = !code.isEmpty() && Character.isJavaIdentifierPart(code.codePointBefore(code.length()));
        if (found.isEmpty() && word) {
            found = shell.analysis().documentation(code + "(", code.length() + 1, true);
        }
        return found;
    }

    private MimeBundle bundle(List<Documentation> found, int detail) {
        var plain = new ArrayList<String>();
        var markdown = new ArrayList<String>();
        for (Documentation each : found.subList(0, Math.min(MOST, found.size()))) {
            var signature = Signature.of(each.signature());
            String comment = commentOn(signature, each).map(c -> detail > 0 || found.size() == 1
                    ? JavadocText.markdown(c) : JavadocText.firstSentence(c)).orElse("");
            plain.add(signature.readable() + (comment.isEmpty() ? "" : "\n\n" + comment.indent(2).stripTrailing()));
            markdown.add("```java\n" + signature.readable() + "\n```" + (comment.isEmpty() ? "" : "\n\n" + comment));
        }
        examplesOf(found).forEach(example -> {
            plain.add("Example:\n" + example.indent(2).stripTrailing());
            markdown.add("Example:\n\n```java\n" + example + "\n```");
        });
        if (found.size() > MOST) {
            plain.add("... and " + (found.size() - MOST) + " more");
            markdown.add("... and " + (found.size() - MOST) + " more");
        }
        Map<String, Object> data = new LinkedHashMap<>();
        data.put(MimeBundle.PLAIN, String.join("\n\n", plain));
        data.put("text/markdown", String.join("\n\n", markdown));
        return MimeBundle.of(data);
    }

    /** How it is written in a cell, unless the comment on a class shows that already. */
    private List<String> examplesOf(List<Documentation> found) {
        return found.stream().limit(MOST).map(each -> Signature.of(each.signature()))
                .filter(signature -> !signature.owner().isEmpty() && isOurs(signature)
                        && !(signature.member().isEmpty() && commentHasCode(signature)))
                .flatMap(signature -> examples.of(signature.owner(), signature.member()).stream())
                .map(Examples.Example::code).distinct().limit(MOST_EXAMPLES).toList();
    }

    private boolean isOurs(Signature signature) {
        return !isCellClass(signature) && qualified(signature.owner()).stream().anyMatch(ours::has);
    }

    private boolean commentHasCode(Signature signature) {
        return qualified(signature.owner()).stream().filter(ours::has).flatMap(owner -> ours.of(owner, "").stream())
                .anyMatch(comment -> JavadocText.markdown(comment).contains("```"));
    }

    private Optional<String> commentOn(Signature signature, Documentation found) {
        if (signature.owner().isEmpty() || isCellClass(signature)) {
            return cellComment(signature);
        }
        for (String owner : qualified(signature.owner())) {
            if (ours.has(owner)) {
                Optional<String> comment = ours.of(owner, signature.member());
                if (comment.isPresent()) {
                    return comment;
                }
            }
        }
        return Optional.ofNullable(found.javadoc());
    }

    private boolean isCellClass(Signature signature) {
        return signature.member().isEmpty() && shell.jshell().types().anyMatch(t -> t.name().equals(signature.owner()));
    }

    /** The comment that stands before a declaration in its cell. */
    private Optional<String> cellComment(Signature signature) {
        String name = signature.member().isEmpty() ? signature.owner() : signature.member().replaceFirst("\\(.*", "");
        return shell.jshell().snippets().filter(s -> s instanceof DeclarationSnippet d && d.name().equals(name)
                        && shell.jshell().status(s).isActive())
                .map(s -> shell.origins().of(s.id())).filter(origin -> origin != null)
                .findFirst().flatMap(Inspection::commentBefore);
    }

    private static Optional<String> commentBefore(Origins.Origin origin) {
        List<Tokens.Token> before = Tokens.of(origin.text().text().substring(0, origin.offset()));
        if (before.isEmpty() || !before.get(before.size() - 1).text().startsWith("/**")) {
            return Optional.empty();
        }
        String comment = before.get(before.size() - 1).text();
        return Optional.of(comment.substring(3, comment.length() - 2).replaceAll("(?m)^\\s*\\* ?", "").strip());
    }

    /** Full names that a name in a signature can stand for: itself, or one of an import. */
    private List<String> qualified(String owner) {
        var names = new ArrayList<String>();
        names.add(owner);
        shell.jshell().imports().map(ImportSnippet::fullname).forEach(imported -> {
            if (imported.endsWith(".*")) {
                String container = imported.substring(0, imported.length() - 2);
                names.add(container + "." + owner);
                if (container.endsWith("." + owner)) {
                    names.add(container);
                }
            } else if (imported.endsWith("." + owner.split("\\.")[0])) {
                names.add(imported.substring(0, imported.lastIndexOf('.') + 1) + owner);
            }
        });
        return names;
    }
}
