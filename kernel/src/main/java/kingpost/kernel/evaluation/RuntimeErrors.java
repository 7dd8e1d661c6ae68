package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.EvalException;

/**
 * What a cell threw, as a reader wants it: the sentence first, then the cell's own lines; frames of the JDK and of
 * libraries are counted, not listed.
 */
final class RuntimeErrors {

    private static final int MOST_FRAMES = 12;
    private static final Pattern FIXED = Pattern.compile(
            "java\\.util\\.(?:ImmutableCollections|Collections\\$Unmodifiable|Collections\\$Empty|Abstract(?:List|Collection)).*");

    private final Origins origins;
    private final int cell;

    RuntimeErrors(Origins origins, int cell) {
        this.origins = origins;
        this.cell = cell;
    }

    /**
     * @param thrown what JShell tells, with frames translated to snippets
     * @param chain  what the calc VM told
     */
    Outcome.Failed failed(EvalException thrown, List<Ending.Thrown> chain) {
        Ending.Thrown first = chain.get(0);
        String name = simple(first.type());
        String message = first.message().orElseGet(() -> withoutMessage(first));
        int line = firstCellLine(thrown.getStackTrace());
        var traceback = new ArrayList<String>();
        if (first.ours()) {
            traceback.add(message.isEmpty() ? name : message);
            placeOf(thrown.getStackTrace()).ifPresent(traceback::add);
        } else {
            traceback.add(headline(name, message));
            traceback.addAll(frames(thrown.getStackTrace()));
            causes(thrown, chain, traceback);
        }
        return new Outcome.Failed(Outcome.Kind.EXCEPTION, name, message.isEmpty() ? name : PlainWords.ofException(message),
                traceback, line);
    }

    /** What a failure means that says nothing itself. */
    private static String withoutMessage(Ending.Thrown thrown) {
        boolean fixed = thrown.frames().length > 0 && FIXED.matcher(thrown.frames()[0].getClassName()).matches();
        return switch (thrown.type()) {
            case "java.lang.StackOverflowError" -> "calls go too deep; see where the recursion ends";
            case "java.util.ConcurrentModificationException" ->
                    "a collection was changed while a loop went through it; use removeIf, or change it after the loop";
            case "java.lang.UnsupportedOperationException" -> fixed
                    ? "this collection cannot be changed; change a copy, as new ArrayList<>(...) makes one" : "";
            default -> "";
        };
    }

    private void causes(Throwable thrown, List<Ending.Thrown> chain, List<String> traceback) {
        Throwable cause = thrown.getCause();
        for (int i = 1; i < chain.size(); i++) {
            traceback.add("Caused by " + headline(simple(chain.get(i).type()), chain.get(i).message().orElse("")));
            if (cause != null) {
                traceback.addAll(frames(cause.getStackTrace()));
                cause = cause.getCause();
            }
        }
    }

    static String headline(String name, String message) {
        return message.isEmpty() ? name : name + ": " + PlainWords.ofException(message);
    }

    /** The class name without its package, and without the wrapper that JShell puts around cells. */
    static String simple(String type) {
        String own = type.replaceFirst("^REPL\\.\\$JShell\\$\\w+\\$", "");
        return own.substring(own.lastIndexOf('.') + 1).replace('$', '.');
    }

    int firstCellLine(StackTraceElement[] frames) {
        for (StackTraceElement frame : frames) {
            Origins.Origin origin = originOf(frame);
            if (origin != null && origin.cell() == cell) {
                return origin.cellLine(frame.getLineNumber());
            }
        }
        return 0;
    }

    private Optional<String> placeOf(StackTraceElement[] frames) {
        return frames(frames).stream().filter(line -> !line.contains(" folded)")).findFirst();
    }

    /** The cell's frames first; how many others there were, last. */
    List<String> frames(StackTraceElement[] frames) {
        var lines = new ArrayList<String>();
        int folded = 0;
        int own = 0;
        for (StackTraceElement frame : frames) {
            Origins.Origin origin = originOf(frame);
            if (origin == null) {
                folded++;
            } else if (++own <= MOST_FRAMES && !repeats(lines, place(frame, origin))) {
                lines.add(place(frame, origin));
            }
        }
        if (own > MOST_FRAMES) {
            lines.add("  ... " + (own - MOST_FRAMES) + " more frames of cells");
        }
        if (folded > 0) {
            lines.add("  (" + folded + (folded == 1 ? " frame" : " frames") + " of the JDK and libraries folded)");
        }
        return lines;
    }

    private static boolean repeats(List<String> lines, String next) {
        return !lines.isEmpty() && lines.get(lines.size() - 1).equals(next);
    }

    private String place(StackTraceElement frame, Origins.Origin origin) {
        int line = origin.cellLine(frame.getLineNumber());
        String where = origin.cell() == cell ? "cell line " + line : "line " + line + " of an earlier cell";
        String method = method(frame.getMethodName());
        return "  at " + where + (method.isEmpty() ? "" : ", in " + method) + ": " + origin.text().line(line).strip();
    }

    private static String method(String name) {
        if (name == null || name.isEmpty() || name.contains("do_it$")) {
            return "";
        }
        return name.startsWith("lambda$") ? "a lambda" : name.equals("<init>") ? "a constructor" : name;
    }

    private Origins.Origin originOf(StackTraceElement frame) {
        String file = frame.getFileName();
        return file != null && file.startsWith("#") ? origins.of(file.substring(1)) : null;
    }
}
