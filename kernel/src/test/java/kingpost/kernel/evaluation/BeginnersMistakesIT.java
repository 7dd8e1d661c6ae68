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

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "String t = null; t.length()                                       | Cannot invoke \"String.length()\" because \"t\" is null",
        "int of() { String text = null; return text.length(); } of()       | Cannot invoke \"String.length()\" because \"text\" is null",
        "Object o = \"s\"; Integer i = (Integer) o;                        | String cannot be cast to Integer"
    })
    void areToldWithoutTheMachinery(String code, String message) {
        var failed = assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of(code), NoOutput.INSTANCE));
        assertEquals(message, failed.message());
    }
}
