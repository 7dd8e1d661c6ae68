package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Examples.Example;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Every example runs in a cell; those that would write, ask or fetch are compiled. */
@Timeout(180)
class ExamplesIT {

    private static final Examples EXAMPLES = Examples.ofTheNotebookLanguage();

    private static final int SEVERAL = 30;
    private static final int EIGHTH = 8;

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
        assertInstanceOf(Outcome.Completed.class, evaluator.run(CellRequest.of(EXAMPLES.given()), NoOutput.INSTANCE));
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    /** The cells of an entry: one for each member that it may stand for; of the many units every eighth will do. */
    private static Set<String> cells(String name, Example example) throws ClassNotFoundException {
        var cells = new LinkedHashSet<String>();
        int dot = name.lastIndexOf('.', name.contains("(") ? name.indexOf('(') : name.length());
        String owner = dot < 0 ? name : name.substring(0, dot);
        if (!name.endsWith(".*")) {
            cells.add(dot < 0 ? example.code() : EXAMPLES.of(owner, name.substring(dot + 1)).orElseThrow().code());
            return cells;
        }
        String unqualified = owner.replace('.', '$');
        Class<?> type = Class.forName((owner.equals("Quantity") || owner.equals("StructuralUnits") ? "kingpost.units."
                : owner.equals("TrussBuilder") ? "kingpost.truss." : "kingpost.notebook.") + unqualified);
        for (Method method : type.getDeclaredMethods()) {
            boolean word = Modifier.isPublic(method.getModifiers()) && !method.isSynthetic();
            String parameters = String.join(",", Arrays.stream(method.getParameterTypes()).map(Class::getSimpleName).toList());
            if (word && !Set.of("equals", "hashCode", "toString", "show", "names", "registry").contains(method.getName())) {
                String own = example.code().replace("{}", method.getName());
                EXAMPLES.of(owner, method.getName() + "(" + parameters + ")").filter(found -> found.code().equals(own))
                        .ifPresent(found -> cells.add(found.code()));
            }
        }
        for (Field field : type.getFields()) {
            cells.add(EXAMPLES.of(owner, field.getName()).orElseThrow().code());
        }
        return cells.size() <= SEVERAL ? cells : IntStream.range(0, cells.size()).filter(i -> i % EIGHTH == 0)
                .mapToObj(List.copyOf(cells)::get).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @Test
    void eachRuns() throws Exception {
        var done = new LinkedHashSet<String>();
        var failures = new ArrayList<String>();
        for (var entry : EXAMPLES.all().entrySet()) {
            for (String code : entry.getKey().equals("!") ? Set.<String>of() : cells(entry.getKey(), entry.getValue())) {
                String cell = entry.getValue().runnable() ? code : "Runnable compiledOnly = () -> { " + code + (code.endsWith(";") ? "" : ";") + " };";
                if (done.add(cell) && evaluator.run(CellRequest.of(cell), NoOutput.INSTANCE) instanceof Outcome.Failed failed) {
                    failures.add(entry.getKey() + ": " + code + "\n    " + failed.message());
                }
            }
        }
        System.out.println(done.size() + " examples");
        assertEquals(List.of(), failures, () -> String.join("\n", failures));
    }

    private static String inspect(String code) {
        return evaluator.inspect(code, code.length(), 1).map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("");
    }

    @Test
    void inspectionShowsThem() {
        for (String[] each : new String[][] {{"Truss.named", "Example:\n  var shed = Truss.named(\"Shed\")"},
                {"canopy.solve", "Example:\n  var s = canopy.solve();\n  s.force(\"AB\")"},
                {"Truss.named(\"x\").joint", "mm(4000)"}, {"s.derivation", "Example:\n  s.derivation()"},
                {"canopy.section", "canopy.section(\"BC BD AD\")"}, {"canopy.member", "bridge.member(\"U2-L3\")"},
                {"kN(", "Example:\n  kN(2.5)"}, {"kN_per_m", "Quantity.of(2.5, kN_per_m)"}, {"given(", "given(\"N\", kN(257)"},
                {"formula", "formula(\"sigma\", \"N / A\", MPa, \"stress\")"}, {"table(", "table(\"Stress\""},
                {"check(", "check(\"sigma <= 165 MPa\", \"tie\")"}, {"canopy.mark", "canopy.mark(\"AB = 8 kN tension"},
                {"canopy.variants", "canopy.variants(3)"}, {"bridge.influence", "bridge.influence(\"U2-L3\").uniform(8)"},
                {"Truss.warren", "Truss.warren(24, 4, 8)"}, {"Quantity", "kN(12).divide(mm2(300)).to(MPa)"},
                {"TrussSolution", "s.force(\"AB\").divide(MPa(165)).to(mm2)"}, {"kN(3).to", "kN(12).to(kip)"}}) {
            assertTrue(inspect(each[0]).contains(each[1]), () -> each[0] + ":\n" + inspect(each[0]));
        }
    }

    @Test
    void aWordOfTheCellsOwnHasNone() {
        evaluator.run(CellRequest.of("class Influence2 { int uniform(int n) { return n; } }"), NoOutput.INSTANCE);
        assertTrue(!inspect("new Influence2().uniform").contains("Example"), inspect("new Influence2().uniform"));
    }
}
