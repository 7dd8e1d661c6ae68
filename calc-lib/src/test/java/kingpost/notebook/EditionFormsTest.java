package kingpost.notebook;

import static kingpost.notebook.Notebook.DOWN;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import org.junit.jupiter.api.Test;

/** What each value that a word of the notebook gives shows in a handout and in a key. */
class EditionFormsTest {

    /** Value to where it is shown beside the solution: handout, key, both or nothing. A new kind has to be decided here. */
    private static final Map<String, String> DECIDED = new TreeMap<>(Map.ofEntries(
            Map.entry("Truss", "handout"), Map.entry("TrussSolution", "handout key"), Map.entry("Working", "handout key"),
            Map.entry("Answer<Determinacy>", "handout key"), Map.entry("Answer<Inspection>", "handout key"),
            Map.entry("Answer<JointOrder>", "handout key"), Map.entry("Answer<SectionResult>", "handout key"),
            Map.entry("Answer<MemberWays>", "handout key"), Map.entry("Answer<SubstitutedMember>", "handout key"),
            Map.entry("Answer<Envelope>", "handout key"), Map.entry("Answer<ForcePolygon>", "handout key"),
            Map.entry("Answer<ForceDiagram>", "handout key"), Map.entry("Influence", "handout key"),
            Map.entry("Answer<TrainEffect>", "handout key"), Map.entry("Answer<UniformEffect>", "handout key"),
            Map.entry("Answer<Checks>", ""), Map.entry("Answer<SecondLook>", ""), Map.entry("Exhibit", ""),
            Map.entry("TrussVariants", "key"), Map.entry("TrussVariant", "handout"), Map.entry("MadeFor", "handout key"),
            Map.entry("MarkedAnswers", ""), Map.entry("ClassMarks", ""), Map.entry("SheetView", "key"),
            Map.entry("TitleBlock", "handout key")));

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** Loads that lead to forces with three figures, none of which is a load or a length. */
    private static Truss shed() {
        return Truss.named("Boat shed").units(m, kN).joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 2, 1.5)
                .joint("E", 4, 3).joint("F", 6, 1.5).members("AB BC AD DE EF CF BD BE BF").pin("A").roller("C")
                .loadCase("roof").load("D", 12.7, DOWN).load("E", 6.1, DOWN).loadCase("hoist").load("B", 13.3, DOWN)
                .combination("1.2 roof + 1.6 hoist").build();
    }

    private static Map<String, Showable> samples() {
        Truss shed = shed();
        TrussSolution s = shed.solve();
        Influence line = shed.influence("BE");
        TrussVariants set = shed.loadCase("hoist").variants(2);
        Map<String, Showable> all = new TreeMap<>();
        all.put("Truss", shed);
        all.put("TrussSolution", s);
        all.put("Working", s.derivation());
        all.put("Answer<Determinacy>", shed.determinacy());
        all.put("Answer<Inspection>", shed.zeroForceMembers());
        all.put("Answer<JointOrder>", shed.jointOrder());
        all.put("Answer<SectionResult>", shed.section("DE BD AB"));
        all.put("Answer<MemberWays>", shed.member("BD"));
        all.put("Answer<SubstitutedMember>", hexagon().substitute("AD"));
        all.put("Answer<Envelope>", shed.envelope());
        all.put("Answer<ForcePolygon>", s.polygon("D"));
        all.put("Answer<ForceDiagram>", s.forceDiagram());
        all.put("Influence", line);
        all.put("Answer<TrainEffect>", line.train(35.3, 1.7, 145.9));
        all.put("Answer<UniformEffect>", line.uniform(8.9));
        all.put("Answer<Checks>", s.checks());
        all.put("Answer<SecondLook>", s.secondLook());
        all.put("Exhibit", shed.diagram());
        all.put("TrussVariants", set);
        all.put("TrussVariant", set.get(1));
        all.put("MarkedAnswers", shed.mark("AB = 12 T"));
        all.put("ClassMarks", shed.markClass("student,AB\nIda,12 T\n"));
        all.put("SheetView", SheetWords.sheet());
        all.put("TitleBlock", TitleBlock.of("Shed"));
        return all;
    }

    /** Six joints in a ring, each tied to the one opposite: no joint has two unknowns to begin with. */
    private static Truss hexagon() {
        return Truss.named("Ring").units(m, kN).joint("A", 0, 0).joint("B", 2, -1.3).joint("C", 4, 0).joint("D", 4.5, 2)
                .joint("E", 2, 3.7).joint("F", -0.4, 2.2).members("AB BC CD DE EF FA AD BE CF").pin("A").roller("C")
                .load("E", 12.7, DOWN).build();
    }

    private static String said(Type type) {
        if (type instanceof ParameterizedType answer) {
            return "Answer<" + ((Class<?>) answer.getActualTypeArguments()[0]).getSimpleName() + ">";
        }
        return ((Class<?>) type).getSimpleName();
    }

    /** The kinds that words of the notebook give. */
    private static Set<String> kinds() {
        Set<String> kinds = new TreeSet<>();
        for (Class<?> words : List.of(Truss.class, TrussSolution.class, Influence.class, TrussVariants.class, TrussVariant.class,
                MarkedAnswers.class, ClassMarks.class, SheetWords.class, Notebook.class)) {
            for (Method method : words.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers()) && Showable.class.isAssignableFrom(method.getReturnType())) {
                    kinds.add(said(method.getGenericReturnType()));
                }
            }
        }
        return kinds;
    }

    @Test
    void everyKindOfResultIsDecided() {
        assertEquals(Set.of(), kinds().stream().filter(kind -> !DECIDED.containsKey(kind)).collect(Collectors.toSet()));
        assertTrue(kinds().size() > 20, kinds()::toString);
    }

    @Test
    void showsWhatWasDecided() {
        Map<String, String> shown = new TreeMap<>();
        samples().forEach((kind, value) -> shown.put(kind, Stream.of(Edition.HANDOUT, Edition.KEY)
                .filter(edition -> value.show(edition).isPresent()).map(Edition::word).collect(Collectors.joining(" "))));
        Map<String, String> decided = new TreeMap<>(DECIDED);
        decided.remove("MadeFor");
        decided.put("SheetView", "");
        assertEquals(decided, shown, "the whole sheet is shown line by line already");
    }

    /** Any number of three figures that the key or the solution tells, and the problem does not, is an answer. */
    @Test
    void noHandoutTellsAnAnswer() {
        int answers = 0;
        for (Map.Entry<String, Showable> each : samples().entrySet()) {
            if (each.getValue().show(Edition.HANDOUT).isEmpty() || each.getKey().equals("TitleBlock")) {
                continue;
            }
            Showable value = each.getValue();
            String handout = words(value.show(Edition.HANDOUT).get());
            String told = words(value.show(Edition.KEY).orElse(Map.of())) + " " + words(value.show());
            Set<String> found = numbers(told);
            found.removeAll(numbers("12.7 6.1 13.3 1.5 35.3 1.7 145.9 8.9 1.2 1.6 0.4 2.2 3.7 4.5"));
            found.removeIf(number -> given(value).contains(number));
            found.retainAll(numbers(handout));
            assertEquals(Set.of(), found, each.getKey() + ": " + handout);
            answers += numbers(told).size();
            assertFalse(handout.contains("no force"), handout);
        }
        assertTrue(answers > 100, "there are answers to find: " + answers);
    }

    /** Numbers of the problem alone, which is made before anything is solved. */
    private static Set<String> given(Showable value) {
        Truss truss = value instanceof TrussVariant variant ? variant.truss() : value instanceof Answer<?> answer
                ? Truss.of(answer.question().orElseThrow().truss()) : shed();
        return numbers(words(truss.show(Edition.HANDOUT).orElseThrow()));
    }

    private static Set<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(result -> result.group()).filter(number -> number.replace(".", "").length() >= 2)
                .filter(number -> number.contains(".") || number.length() > 2).collect(Collectors.toCollection(TreeSet::new));
    }

    /** All words of all forms, without the places at which they are drawn. */
    private static String words(Object forms) {
        List<String> all = new ArrayList<>();
        collect(forms, all);
        return String.join(" ", all).replaceAll("data:image/[^\")]*", " ").replaceAll("<[^>]*>", " ")
                .replaceAll("(?s)\\\\begin\\{(tikz|pgf)picture}.*?\\\\end\\{(tikz|pgf)picture}", " ");
    }

    private static void collect(Object part, List<String> all) {
        if (part instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                if (!key.equals("image/png") && !key.equals("text/latex") && !key.equals("about")) {
                    collect(value, all);
                }
            });
        } else if (part instanceof Iterable<?> list) {
            list.forEach(item -> collect(item, all));
        } else {
            all.add(String.valueOf(part));
        }
    }

    @Test
    void whatIsMadeForAnEditionSaysSo() {
        samples().forEach((kind, value) -> {
            for (Edition edition : List.of(Edition.HANDOUT, Edition.KEY)) {
                value.show(edition).ifPresent(forms -> assertEquals(edition.word(),
                        ((Map<?, ?>) forms.get(Exhibit.RESULT)).get("edition"), kind));
            }
        });
    }
}
