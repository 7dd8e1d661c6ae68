package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Locale;
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
    private static final Map<String, String> MADE = Map.of("Set", "HashSet", "Map", "HashMap", "Queue", "ArrayDeque",
            "Deque", "ArrayDeque");
    private static final Map<String, String> PARSERS = Map.of("int", "Integer.parseInt", "long", "Long.parseLong",
            "double", "Double.parseDouble");
    private static final Map<String, String> COMPARED = Map.of("<", "< 0", ">", "> 0", "<=", "<= 0", ">=", ">= 0");
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
            rule("package (system|math|string|integer|double|arrays|list|collections) does not exist", m ->
                    "cannot find %s; did you mean %s?".formatted(m.group(1), m.group(1).substring(0, 1).toUpperCase(Locale.ROOT)
                            + m.group(1).substring(1))),
            rule("'(.)' expected", m -> "%s is missing here".formatted(m.group(1))),
            rule("('.'(?:,? or '.'|, '.')+) expected", m -> "one of %s is missing here".formatted(
                    m.group(1).replaceAll(",? or ", ", ").replaceAll("'(.)',? ?", "$1 ").strip())),
            rule("incompatible types: bad return type in lambda expression: unexpected return value",
                    m -> "this lambda is to give nothing back; leave out return, or let its type be a Supplier"),
            rule("incompatible types: (.+) is not a functional interface", m -> ("a lambda is no %s; its type is one such as"
                    + " Supplier<Double> or Function<Double, Double>").formatted(m.group(1))),
            rule("incompatible types: (.+) cannot be converted to Throwable", m -> "only exceptions can be thrown; write throw"
                    + " new IllegalArgumentException(...)"),
            rule("incompatible types: int cannot be converted to boolean", m -> "a boolean is true or false, not a number"),
            rule("unclosed string literal", m -> "text ends with \" on the line on which it begins; text of several lines"
                    + " stands between \"\"\" and \"\"\""),
            rule("empty character literal", m -> "single quotes hold one character; empty text is \"\""),
            rule("illegal escape character", m -> "a backslash in text is written twice, \\\\"),
            rule("integer number too large.*", m -> "this number is too large for an int; write L behind it for a long, or"
                    + " .0 for a double"),
            rule("incompatible types: possible lossy conversion from double to float",
                    m -> "not every double fits into float; declare a double, or write f behind the number"),
            rule("incompatible types: possible lossy conversion from (\\w+) to (\\w+)", m -> "not every %1$s fits into %2$s;"
                    .formatted(m.group(1), m.group(2)) + " declare a %1$s, or write (%2$s) before the value to cut it"
                    .formatted(m.group(1), m.group(2))),
            rule("(\\w+) cannot be dereferenced", m -> "%1$s is no object and has no methods; %2$s has some that take one"
                    .formatted(m.group(1), BOXES.getOrDefault(m.group(1), "its class"))),
            rule("(List|Set|Map|Collection|Queue|Deque)(?:<.*>)? is abstract; cannot be instantiated", m -> "a %s is made by"
                    .formatted(m.group(1)) + " new %s<>()".formatted(MADE.getOrDefault(m.group(1), "ArrayList"))),
            rule("incompatible types: String cannot be converted to char",
                    m -> "one character stands in single quotes; double quotes make a String"),
            rule("incompatible types: (int|long|double|float|boolean|char) cannot be converted to String",
                    m -> "%s is no text; write String.valueOf(...) around it".formatted(m.group(1))),
            rule("incompatible types: String cannot be converted to (int|long|double)", m -> ("text is no %s; write the number"
                    + " without quotes, or %s(...) around text that holds one").formatted(m.group(1), PARSERS.get(m.group(1)))),
            rule("incompatible types: String cannot be converted to Unit<.*>",
                    m -> "a unit is a word without quotes, as in kN"),
            rule("incompatible types: String cannot be converted to TrussModel", m -> "a truss begins with"
                    + " Truss.named(\"...\")"),
            rule("incompatible types: TrussBuilder<Truss> cannot be converted to Truss",
                    m -> "this truss is not built yet; end it with .build()"),
            rule("incompatible types: unexpected return value", m -> "a void method gives nothing back; write the type of its"
                    + " result in place of void"),
            rule("for-each not applicable to expression type: required: array or Iterable, found: (.+)",
                    m -> "a for loop goes through an array or a list, not %s".formatted(m.group(1))),
            rule("array required, but (List|ArrayList)(?:<.*>)? found", m -> "[ ] takes from an array; write get(...) for a list"),
            rule("array required, but String found", m -> "[ ] takes from an array; write charAt(...) for a character of text"),
            rule("array required, but (.+) found", m -> "[ ] takes from an array, and this is %s".formatted(m.group(1))),
            rule("cannot infer type for local variable (\\w+): \\(array initializer needs .*", m -> ("values in { } do not tell"
                    + " the type of %s; write a type for var, such as double[], or var %s = List.of(...)").formatted(
                    m.group(1), m.group(1))),
            rule("unexpected type: required: variable, found: value", m -> "only a variable can be given a value here"),
            rule("non-static variable (this|super) cannot be referenced from a static context",
                    m -> "%s has a meaning only inside a class".formatted(m.group(1))),
            rule("not a statement", m -> "this does nothing by itself; a statement declares, gives a value, or calls"),
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
            rule("Could not initialize class (\\S+)", m -> "the static part of class %s has failed before; correct it and run"
                    .formatted(RuntimeErrors.simple(m.group(1))) + " its cell again"),
            rule("Exception (\\S+): (.*) \\[in thread \"cell\"\\]", m -> m.group(1).endsWith(".CellStopped") ? m.group(2)
                    : RuntimeErrors.simple(m.group(1)) + ": " + m.group(2)),
            rule("Cannot invoke \"java\\.lang\\.(?:Integer|Long|Double|Float|Boolean|Character)\\.\\w+Value\\(\\)\" because"
                    + " \"(.+)\" is null", m -> "\"%s\" is null, which is no value".formatted(m.group(1))),
            rule("For input string: \"(\\d+),(\\d+)\"", m -> "\"%1$s,%2$s\" is no number; decimals stand after a point, \"%1$s.%2$s\""
                    .formatted(m.group(1), m.group(2))),
            rule("For input string: (\".*\")", m -> "%s is no number".formatted(m.group(1))),
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
        if (COMPARED.containsKey(sign) && first.equals("Quantity") && second.equals("Quantity")) {
            return "the operator %s does not work on quantities; write a.compareTo(b) %s".formatted(sign, COMPARED.get(sign));
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
