package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences of the compiler and of the VM, in words that say what to do. */
final class PlainWords {

    private record Rule(Pattern said, Function<MatchResult, String> plain) { }

    private static final Map<String, String> BOXES = Map.of("int", "Integer", "long", "Long", "short", "Short", "byte",
            "Byte", "double", "Double", "float", "Float", "boolean", "Boolean", "char", "Character");
    private static final Map<String, String> VERBS = Map.of("+", "add", "-", "subtract", "*", "multiply", "/", "divide");

    private static final List<Rule> OF_THE_COMPILER = List.of(
            rule("unreported exception (\\w+); must be caught or declared to be thrown",
                    m -> "%1$s must be caught or declared; add throws %1$s to the method".formatted(m.group(1))),
            rule("incompatible types: inference variable \\w+ has incompatible (?:bounds|equality constraints).*"
                    + "equality constraints: (.+?), lower bounds: (.+)",
                    m -> "incompatible types: %s where %s is needed".formatted(m.group(2), m.group(1))),
            rule("incompatible types: <nulltype> cannot be converted to (\\w+)",
                    m -> "a variable of type %s cannot be null, only objects can; write %s for one that may be"
                            .formatted(m.group(1), BOXES.getOrDefault(m.group(1), m.group(1)))),
            rule("unexpected type: required: reference, found: (\\w+)", m -> "%s cannot stand between < and >; write %s"
                    .formatted(m.group(1), BOXES.getOrDefault(m.group(1), "a class"))),
            rule("bad operand types for binary operator '(.+)': first type: (.+), second type: (.+)",
                    m -> operator(m.group(1), m.group(2), m.group(3))),
            rule("bad operand type (.+) for unary operator '(.+)'",
                    m -> "the operator %s does not work on %s".formatted(m.group(2), m.group(1))),
            rule("cannot infer type for local variable (\\w+): \\(cannot use 'var' on variable without initializer\\)",
                    m -> "var %1$s has no value to take its type from; write var %1$s = ..., or a type for var"
                            .formatted(m.group(1))),
            rule("cannot infer type for local variable (\\w+): \\(variable initializer is 'null'\\)",
                    m -> "null does not tell the type of %s; write a type for var".formatted(m.group(1))),
            rule("cannot infer type for local variable (\\w+): \\((?:lambda expression|method reference) needs .*",
                    m -> "a lambda does not tell the type of %s; write a type for var, such as Function<Double, Double>"
                            .formatted(m.group(1))),
            rule("unclosed character literal", m -> "unclosed character literal; single quotes hold one character,"
                    + " text stands in double quotes"),
            rule("constant string too long", m -> "a text in a cell may have at most 65,535 bytes; read a longer one from a"
                    + " file, as with Files.readString(Path.of(...))"),
            rule("code too large(?: for try statement)?", m -> "this is too long for one method or one list of values; split"
                    + " it, or read the values from a file"),
            rule("too many constants", m -> "this has more constants than one class may; split it"),
            rule("JShell method names must not match Object methods.*", m -> "a cell's method cannot have this name,"
                    + " because every object has a method of that name; give it another"),
            rule("invalid canonical constructor in record (\\w+): \\(attempting to assign stronger access .*",
                    m -> "in a notebook the constructor of record %s must be public; write public before it"
                            .formatted(m.group(1))));

    private static final List<Rule> OF_THE_VM = List.of(
            rule("class (\\S+) cannot be cast to class (\\S+) \\(.*", m -> "%s cannot be cast to %s".formatted(
                    RuntimeErrors.simple(m.group(1)), RuntimeErrors.simple(m.group(2)))));
    private static final Pattern CELL_CLASS = Pattern.compile("REPL\\.\\$JShell\\$\\w+(?:/0x[0-9a-f]+)?[.$]");

    private PlainWords() {
    }

    private static Rule rule(String said, Function<MatchResult, String> plain) {
        return new Rule(Pattern.compile(said, Pattern.DOTALL), plain);
    }

    private static String operator(String sign, String first, String second) {
        if (VERBS.containsKey(sign) && (first.equals("Quantity") || second.equals("Quantity"))) {
            return "the operator %s does not work on quantities; write a.%s(b) for a %s b".formatted(sign,
                    VERBS.get(sign), sign);
        }
        return "the operator %s does not work on %s and %s".formatted(sign, first, second);
    }

    /** A sentence of the compiler. */
    static String ofCompiler(String sentence) {
        return by(OF_THE_COMPILER, sentence);
    }

    /** The message of an exception that the VM or the JDK made; names of the classes around cells are left out. */
    static String ofException(String message) {
        return by(OF_THE_VM, CELL_CLASS.matcher(message).replaceAll(""));
    }

    private static String by(List<Rule> rules, String sentence) {
        for (Rule rule : rules) {
            Matcher matcher = rule.said.matcher(sentence);
            if (matcher.matches()) {
                return rule.plain.apply(matcher);
            }
        }
        return sentence;
    }
}
