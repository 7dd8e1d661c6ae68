package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody new to Java writes, and the one sentence that helps. */
@Timeout(60)
class BeginnersMistakesIT {

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    /** The code, the sentence, and where the caret stands (column from 0), all of one line of one cell. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "double d = 3,5;                       | decimals stand after a point; write 3.5 | 11",
        "double load = 12 kN;                  | a quantity is written with its unit in front; write kN(12) | 14",
        "“hello”                               | Java does not know the character “; write \" | 0",
        "var n = 5 – 1;                        | Java does not know the character –; write - | 10",
        "String class = \"x\";                 | class is a word of the language; give another name | 7",
        "int 2x = 3;                           | a name cannot begin with a digit | 4",
        "int a = 1; }                          | this } closes nothing that is open | 11",
        "String s = 'hello';                   | unclosed character literal; single quotes hold one character, text stands in double quotes | 11",
        "print(\"x\")                          | cannot find method print(String); write System.out.print(...) | 0",
        "kN(12) + kN(3)                        | the operator + does not work on quantities; write a.add(b) for a + b | 7",
        "\"a\" - \"b\"                         | the operator - does not work on String and String | 4",
        "var z;                                | var z has no value to take its type from; write var z = ..., or a type for var | 4",
        "List<int> numbers;                    | int cannot stand between < and >; write Integer | 5",
        "List<String> names = List.of(1, 2);   | incompatible types: Integer where String is needed | 28",
        "int n = null;                         | a variable of type int cannot be null, only objects can; write Integer for one that may be | 8",
        "void wait1() { Thread.sleep(10); }    | InterruptedException must be caught or declared; add throws InterruptedException to the method | 27",
        "int[] row = {1}; row.length()         | cannot find method length() in row, which is an int[]; did you mean length? | 21",
        "while (false) { int never = 1; }      | unreachable statement | 14"
    })
    void areTold(String code, String sentence, int caret) {
        var failed = assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of(code), NoOutput.INSTANCE));
        assertEquals(sentence, failed.message());
        assertEquals("Cell line 1: " + sentence + "\n  " + code + "\n  " + " ".repeat(caret) + "^",
                String.join("\n", failed.traceback()));
    }

    /** What people bring along from other languages, leave out, or take one thing for another. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "# a comment | a comment begins with // | 0",
        "!ls | a cell holds Java only; commands of other programs are not known here | 0",
        "%matplotlib inline | a cell holds Java only; commands of other programs are not known here | 0",
        "/list | a cell holds Java only; commands of other programs are not known here | 0",
        "?kN | for help put the cursor behind a name and press Shift and Tab | 0",
        "kN? | for help put the cursor behind a name and press Shift and Tab | 2",
        "package mine; | a cell belongs to no package; leave this line out | 0",
        "def f(x): return x | a method begins with the type of its result and has one for each value that it takes, as in double twice(double x) { return 2 * x; } | 0",
        "let v = 5; | Java has no word let; write var v = ... | 0",
        "const v = 5; | Java has no word const; write var v = ... | 0",
        "x := 5 | a value is given with = alone; write var x = ... | 0",
        "print \"hello\" | text is printed with System.out.println(...) | 0",
        "from math import sqrt | an import names classes of Java, as in import java.util.*; | 0",
        "import numpy as np | an import names classes of Java, as in import java.util.*; | 12",
        "for i in range(3): print(i) | a loop is written for (int i = 0; i < 10; i++) { ... } or for (var each : list) { ... } | 0",
        "for (int i = 0, i < 3, i++) { } | the three parts of a for are divided by semicolons, as in for (int i = 0; i < 10; i++) | 14",
        "if n == 3 { } | what if asks stands in parentheses; write if (...) | 0",
        "while n < 3 { } | what while asks stands in parentheses; write while (...) | 0",
        "else { } | else belongs to the if before it; write both in one cell, with { } around what if does | 0",
        "if (n = 3) { } | one = gives a value; two compare, so write == | 6",
        "true and false | and is written && | 5",
        "2 ** 3 | Java has no operator **; write Math.pow(a, b) | 2",
        "int[] v4 = [1, 2, 3]; | a list is written List.of(1, 2, 3), and an array new double[] {1, 2, 3} | 11",
        "int v5[3]; | the length of an array stands behind new, as in int[] a = new int[3]; | 6",
        "f4(int a) { return a; } | the method f4 needs the type of its result in front, or void when it has none | 0",
        "int f5(a) { return a; } | a needs a type, as in double a | 7",
        "int f7(int a) return a; | what a method does stands between { and } | 14",
        "int my-var = 3; | a name is made of letters, digits and _; write my_var | 4",
        "int my var = 3; | a name is one word; write my_var | 4",
        "int sum = 2 + ; | a value is missing behind + | 12",
        "int big = 12345678901; | this number is too large for an int; write L behind it for a long, or .0 for a double | 10",
        "float f = 1.5; | not every double fits into float; declare a double, or write f behind the number | 10",
        "int z0 = 3.5; | not every double fits into int; declare a double, or write (int) before the value to cut it | 9",
        "n.toString() | int is no object and has no methods; Integer has some that take one | 1",
        "List<String> l1 = new List<>(); | a List is made by new ArrayList<>() | 18",
        "char c = \"a\"; | one character stands in single quotes; double quotes make a String | 9",
        "String s1 = 5; | int is no text; write String.valueOf(...) around it | 12",
        "int y = \"five\"; | text is no int; write the number without quotes, or Integer.parseInt(...) around text that holds one | 8",
        "void f3() { return 5; } | a void method gives nothing back; write the type of its result in place of void | 19",
        "for (int i : 5) { } | a for loop goes through an array or a list, not int | 13",
        "names[0] | [ ] takes from an array; write get(...) for a list | 5",
        "var v3 = {1, 2}; | values in { } do not tell the type of v3; write a type for var, such as double[], or var v3 = List.of(...) | 4",
        "n++ ++ | only a variable can be given a value here | 1",
        "this | this has a meaning only inside a class | 0",
        "system.out.println(\"x\"); | cannot find system; did you mean System? | 6",
        "\"hello | text ends with \" on the line on which it begins; text of several lines stands between \"\"\" and \"\"\" | 0",
        "'' | single quotes hold one character; empty text is \"\" | 0",
        "/* hidden: 5 | this comment is never closed; write */ where it ends | 0",
        "int 😀 = 3; | names are made of letters, digits and _; pictures stand in text only | 4",
        "boolean b2 = True; | cannot find variable True; write true | 13",
        "None | cannot find variable None; write null | 0",
        "sqrt(2) | cannot find method sqrt(int); write Math.sqrt(...) | 0",
        "max(1, 2) | cannot find method max(int,int); write Math.max(...) | 0",
        "PI | cannot find variable PI; write Math.PI | 0",
        "len(names) | cannot find method len(List<String>); text has length(), a list has size(), an array length | 0",
        "kN(5).plus(kN(2)) | cannot find method plus(Quantity) in Quantity; did you mean add(...)? | 6",
        "m(3) > m(2) | the operator > does not work on quantities; write a.compareTo(b) > 0 | 5",
        "kn(5) | cannot find method kn(int); did you mean kN(...)? | 0",
        "new Truss(\"x\") | a truss begins with Truss.named(\"...\") | 10",
        "Truss.named(\"q\").units(\"m\", \"kN\") | a unit is a word without quotes, as in kN | 23",
        "if (n == 3 { } | ) is missing here | 10",
        "int f6(int a { return a; } | one of , ) [ is missing here | 12",
        "int f8(int a) { return a } | ; is missing here | 24",
        "Runnable r1 = () -> { return 5; }; | this lambda is to give nothing back; leave out return, or let its type be a Supplier | 29",
        "int lam = () -> 5; | a lambda is no int; its type is one such as Supplier<Double> or Function<Double, Double> | 10",
        "boolean b = 1; | a boolean is true or false, not a number | 12",
        "names.length | cannot find variable length in names, which is a List<String>; did you mean size()? | 6",
        "solve(n) | cannot find method solve(int); a truss is solved by t.solve(), where t is its name | 0",
        "Truss.named(\"q\").units(m, kN).build().force(\"AB\") | cannot find method force(String) in Truss; solve it first, as in .solve().force(\"AB\") | 38",
        "Truss t9 = Truss.named(\"q\").units(m, kN); | this truss is not built yet; end it with .build() | 33",
        "Truss.named(\"q\").units(m, kN).joint(A, 0, 0) | cannot find variable A; names of joints and members stand in quotes, \"A\" | 36"
    })
    void areToldInJava(String code, String sentence, int caret) {
        evaluator.run(CellRequest.of("int n = 3; List<String> names = new ArrayList<>(List.of(\"a\", \"b\"));"), NoOutput.INSTANCE);
        areTold(code, sentence, caret);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "String t = null; t.length()                                       | Cannot invoke \"String.length()\" because \"t\" is null",
        "int of() { String text = null; return text.length(); } of()       | Cannot invoke \"String.length()\" because \"text\" is null",
        "Object o = \"s\"; Integer i = (Integer) o;                        | String cannot be cast to Integer",
        "String path = \"C:\\Users\";                                      | a backslash in text is written twice, \\\\",
        "Integer none = null; int sum = none;                             | \"none\" is null, which is no value",
        "Double.parseDouble(\"3,5\")                                       | \"3,5\" is no number; decimals stand after a point, \"3.5\"",
        "Integer.parseInt(\"12a\")                                         | \"12a\" is no number",
        "List.of(1, 2).add(3)                                             | this collection cannot be changed; change a copy, as new ArrayList<>(...) makes one",
        "var l = new ArrayList<>(List.of(1, 2, 3)); for (var e : l) l.remove(e); | a collection was changed while a loop went through it; use removeIf, or change it after the loop"
    })
    void areToldWithoutTheMachinery(String code, String message) {
        var failed = assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of(code), NoOutput.INSTANCE));
        assertEquals(message, failed.message());
    }
}
