package kingpost.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.moving.InfluenceLine;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.moving.WheelTrain;
import kingpost.statics.Determinacy;
import kingpost.statics.Determinacy.Count;
import kingpost.statics.Envelope;
import kingpost.statics.Inspection;
import kingpost.statics.JointOrder;
import kingpost.statics.MemberWays;
import kingpost.statics.SectionResult;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.SubstitutedMember;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * What a handout asks where the solution answers, and the answer alone for a key. The question is put from the truss as
 * it was written down and from what was named in asking: nothing that was worked out is in it, not even how many rows
 * an answer takes.
 */
public final class Question {

    private static final int ROWS_TO_FILL = 5;
    /** Blanks that do not give way, so that a cell is high and wide enough to write in. */
    private static final String ROOM = "\u00a0".repeat(10);

    private final TrussModel truss;
    private final String title;
    private final Supplier<List<Block>> asked;
    private final Supplier<List<Block>> answer;

    private Question(TrussModel truss, String title, Supplier<List<Block>> asked, Supplier<List<Block>> answer) {
        this.truss = truss;
        this.title = title;
        this.asked = asked;
        this.answer = answer;
    }

    /** The truss that is asked about. */
    public TrussModel truss() {
        return truss;
    }

    /** What is asked, in a few words; the same question has the same. */
    public String title() {
        return truss.name() + ": " + title;
    }

    /** The figure, the question and room to answer it. */
    public Derivation handout() {
        List<Block> blocks = new ArrayList<>(Pictures.truss(truss));
        blocks.addAll(asked.get());
        return new Derivation(title(), blocks);
    }

    /** The answer without its working. */
    public Derivation key() {
        return new Derivation(title(), answer.get());
    }

    public static Question determinacy(TrussModel truss, Determinacy facts) {
        String equations = (truss.isSpace() ? 3 : 2) + "j";
        List<Column> columns = Stream.of("m", "r", "j", "m + r", equations, "Stable?", "Determinate?").map(Column::left).toList();
        return new Question(truss, "can statics alone solve it?", () -> List.of(
                Prose.of("Count the members m, the reactions r and the joints j, and compare m + r with " + equations
                        + ". Can anything move? Does equilibrium alone give every force?"), toFill(columns, 1)), () -> {
            Count count = facts.count();
            List<String> row = new ArrayList<>(IntStream.of(count.members(), count.reactions(), count.joints(), count.unknowns(),
                    count.equations()).mapToObj(Integer::toString).toList());
            row.addAll(verdict(facts));
            return List.of(new Table(Phrase.EMPTY, columns, List.of(row.stream().map(Phrase::of).toList()), false));
        });
    }

    private static List<String> verdict(Determinacy facts) {
        return facts.accept(new Determinacy.Visitor<>() {
            @Override
            public List<String> determinate(Determinacy.Determinate determinacy) {
                return List.of("yes", "yes");
            }

            @Override
            public List<String> indeterminate(Determinacy.Indeterminate determinacy) {
                return List.of("yes", "no, by " + determinacy.degree());
            }

            @Override
            public List<String> mechanism(Determinacy.Mechanism determinacy) {
                return List.of("no, a mechanism", "no");
            }
        });
    }

    public static Question zeroForceMembers(TrussModel truss, Inspection facts) {
        return new Question(truss, "members that carry nothing", () -> List.of(
                Prose.of("Which members carry nothing under these loads? Look at each joint before writing any equation, and give"
                        + " the joint and the reason for each. Which joints only look that way?"),
                toFill(List.of(Column.left("Member"), Column.left("Seen at joint"), Column.left("Because")), ROWS_TO_FILL)), () ->
                facts.zeroForceMembers().isEmpty() ? List.of(Prose.of("None is seen to carry nothing."))
                        : List.of(new Table(Phrase.EMPTY, List.of(Column.left("Member"), Column.left("Seen at joint")),
                                facts.findings().stream().flatMap(finding -> finding.zero().stream()
                                        .map(member -> List.of(Phrase.of(member.name()), Phrase.of(finding.joint()))))
                                        .distinct().toList(), true)));
    }

    public static Question jointOrder(TrussModel truss, JointOrder facts) {
        Notation notation = new Notation(truss);
        return new Question(truss, "order of the joints", () -> List.of(
                Prose.of("In which order can the joints be worked? Give for each joint the forces that it yields. You may not need"
                        + " all rows; say where joints alone do not suffice, and whether the reactions come first."),
                toFill(List.of(Column.left("Number"), Column.left("Joint"), Column.left("Gives")),
                        IntStream.rangeClosed(1, truss.joints().size()).mapToObj(Integer::toString).toList())), () -> List.of(
                new Table(Phrase.EMPTY, List.of(Column.left("Number"), Column.left("Joint"), Column.left("Gives")),
                        facts.turns().stream().map(turn -> List.of(Phrase.of(Integer.toString(turn.number())),
                                Phrase.of(turn.joint()), Series.and(turn.gives(), source -> Phrase.of(notation.symbol(source)))))
                                .toList(), true)));
    }

    public static Question section(SectionResult facts) {
        List<String> names = facts.asked().stream().map(Member::name).toList();
        return new Question(facts.truss(), "section through " + String.join(", ", names), () -> List.of(
                new Prose(Phrase.of("Cut ").then(Series.names(names)).text(" and keep one part. Draw it with every force on it, and"
                        + " find each force cut by an equation in which it stands alone; if the cut gives nothing, say why.")),
                forces(facts.truss(), names)), () -> sectionAnswer(facts));
    }

    private static List<Block> sectionAnswer(SectionResult facts) {
        return facts.accept(new SectionResult.Visitor<>() {
            @Override
            public List<Block> solved(SectionResult.Solved solved) {
                Notation notation = new Notation(solved.truss());
                return List.of(forces(notation, solved.asked().stream().map(member -> solved.idle().contains(member)
                        ? row(notation, member.name(), 0) : found(solved.section(), member)
                        .map(force -> row(notation, member.name(), force))
                        .orElse(List.of(Phrase.of(member.name()), Phrase.of("not by this section"), Phrase.EMPTY))).toList()));
            }

            @Override
            public List<Block> impossible(SectionResult.Impossible impossible) {
                Phrase said = Phrase.of("This section gives nothing.");
                return List.of(new Prose(impossible.offer().isEmpty() ? said : said.sentence(Phrase.of("Another does: ")
                        .then(Series.names(impossible.offer().stream().map(Member::name).toList())).text("."))));
            }
        });
    }

    private static Optional<Double> found(Step step, Member member) {
        return step.answers().stream().filter(answer -> answer.unknown().equals(new Source.OfMember(member)))
                .map(Step.Answer::value).findFirst();
    }

    public static Question member(MemberWays facts) {
        String name = facts.member().name();
        return new Question(facts.truss(), "the force in " + name, () -> List.of(
                Prose.of("Find the force in " + name + " by the shortest way that you see: by looking, by a section, or by joints."),
                forces(facts.truss(), List.of(name))), () -> {
            Notation notation = new Notation(facts.truss());
            return List.of(forces(notation, List.of(row(notation, name, facts.zero() ? 0 : facts.force()))));
        });
    }

    public static Question substitute(SubstitutedMember facts) {
        return new Question(facts.truss(), "by a substitute for " + facts.removed().name(), () -> List.of(
                Prose.of("Joints alone do not reach every member. Take " + facts.removed().name() + " out and put"
                        + " another in its place, so that they do; work the changed truss under the loads and under a pull between"
                        + " the ends of " + facts.removed().name() + ", and find every force in the truss as it is."),
                forces(facts.truss(), facts.truss().members().stream().map(Member::name).toList())), () -> {
            Notation notation = new Notation(facts.truss());
            return List.of(forces(notation, facts.rows().stream().map(row -> row(notation, row.member().name(), row.force()))
                    .toList()));
        });
    }

    /** What governs each member. */
    public static Question envelope(Envelope facts) {
        String unit = " (" + new Notation(facts.truss()).forceLabel() + ")";
        return new Question(facts.truss(), "largest tension and compression", () -> List.of(combined(facts),
                toFill(List.of(Column.left("Member"), Column.left("Tension" + unit), Column.left("Governed by"),
                        Column.left("Compression" + unit), Column.left("Governed by")), names(facts.truss()))),
                () -> shown(EnvelopeExplanation.of(facts).blocks()));
    }

    /** Every force in every case and combination. */
    public static Question combinations(Envelope facts) {
        return new Question(facts.truss(), "forces by load case and combination", () -> List.of(combined(facts),
                toFill(Stream.concat(Stream.of("Member"), Stream.concat(facts.cases().stream(), facts.combinations().isEmpty()
                        ? Stream.empty() : facts.columns().stream())).map(Column::left).toList(), names(facts.truss()))),
                () -> shown(EnvelopeExplanation.ofAll(facts).blocks()));
    }

    private static Block combined(Envelope facts) {
        Phrase cases = Phrase.of("The load cases are ").then(Series.names(facts.cases()));
        Phrase all = facts.combinations().isEmpty() ? cases.text(".") : cases.text("; combined are ")
                .then(Series.names(facts.columns())).text(".");
        return new Prose(all.sentence("Solve each case once, and add."));
    }

    public static Question polygon(ForcePolygon facts) {
        return new Question(facts.truss(), "force polygon of joint " + facts.joint(), () -> List.of(new Prose(
                Phrase.of("Draw the forces on joint ").strong(facts.joint()).text(" to scale from tip to tail, clockwise round the"
                        + " joint, and read off those that are not known.")),
                toFill(List.of(Column.left("Side"), Column.left("Force"), Column.left("Length"), Column.left("Tension or compression")),
                        ROWS_TO_FILL)), () -> shown(ForcePolygonExplanation.of(facts).blocks()));
    }

    public static Question forceDiagram(ForceDiagram facts) {
        return new Question(facts.truss(), "force diagram", () -> List.of(
                Prose.of("Name the spaces, choose a scale, and draw the force diagram of the whole truss. Measure the force in each"
                        + " member. Scale: ____"), forces(facts.truss(), names(facts.truss()))),
                () -> shown(ForceDiagramExplanation.of(facts).blocks()));
    }

    public static Question influence(InfluenceLine facts) {
        return new Question(facts.truss(), "influence line of " + InfluenceExplanation.name(facts.effect()), () -> List.of(
                Prose.of("A load of 1, straight down, moves along " + chord(facts) + ". Find "
                        + InfluenceExplanation.name(facts.effect()) + " for each place of the load, and draw its influence line."),
                toFill(List.of(Column.left("Load on"), Column.left("Ordinate")), chordJoints(facts))),
                () -> shown(InfluenceExplanation.of(facts).blocks()));
    }

    public static Question train(TrainEffect facts) {
        InfluenceLine line = facts.line();
        return new Question(line.truss(), "a wheel train and " + InfluenceExplanation.name(line.effect()), () -> List.of(
                Prose.of("A train of wheels moves along " + chord(line) + ", in either direction. Where does it do most to "
                        + InfluenceExplanation.name(line.effect()) + ", and how much?"), wheels(line.truss(), facts.train()),
                most(line.truss(), true)), () -> List.of(new Table(Phrase.EMPTY, most(line.truss(), true).columns(), List.of(
                        placed("largest", line, facts.largest()), placed("smallest", line, facts.smallest())), true)));
    }

    private static List<Phrase> placed(String which, InfluenceLine line, Optional<TrainEffect.Placement> at) {
        Notation notation = new Notation(line.truss());
        return at.map(place -> List.of(Phrase.of(which), Phrase.of(Notation.three(notation.inForceUnit(place.effect()))),
                Phrase.of("wheel " + place.wheel() + " at " + place.joint() + ", travelling to the "
                        + (place.rightward() ? "right" : "left"))))
                .orElse(List.of(Phrase.of(which), Phrase.of("none"), Phrase.EMPTY));
    }

    private static Block wheels(TrussModel truss, WheelTrain train) {
        Notation notation = new Notation(truss);
        return new Table(Phrase.of("The wheels, the leading one first"), List.of(Column.left("Wheel"), Column.right("Load"),
                Column.right("Behind the first (" + notation.lengthLabel() + ")")), IntStream.range(0, train.wheels().size())
                .mapToObj(i -> List.of(Phrase.of(Integer.toString(i + 1)), Phrase.of(Notation.given(train.wheels().get(i).load())),
                        Phrase.of(notation.length(train.wheels().get(i).behind()).number()))).toList(), true);
    }

    public static Question uniform(UniformEffect facts) {
        InfluenceLine line = facts.line();
        return new Question(line.truss(), "a uniform load and " + InfluenceExplanation.name(line.effect()), () -> List.of(
                new Prose(Phrase.of("A uniform load of ").math(Notation.given(facts.intensity())).text(" may stand on any stretches of "
                        + chord(line) + ". Which stretches do most to " + InfluenceExplanation.name(line.effect())
                        + ", and how much?")), most(line.truss(), false)), () -> {
            Notation notation = new Notation(line.truss());
            return List.of(new Table(Phrase.EMPTY, List.of(Column.left(""), Column.right("Effect (" + notation.forceLabel() + ")")),
                    List.of(List.of(Phrase.of("largest"), number(notation, facts.largest())),
                            List.of(Phrase.of("smallest"), number(notation, facts.smallest())),
                            List.of(Phrase.of("whole chord loaded"), number(notation, facts.whole()))), true));
        });
    }

    private static Table most(TrussModel truss, boolean wheels) {
        return toFill(List.of(Column.left(""), Column.left("Effect (" + new Notation(truss).forceLabel() + ")"),
                Column.left(wheels ? "Place of the train" : "Stretches loaded")), List.of("largest", "smallest"));
    }

    private static String chord(InfluenceLine line) {
        return "the chord " + String.join(" ", chordJoints(line));
    }

    private static List<String> chordJoints(InfluenceLine line) {
        return line.ordinates().stream().map(InfluenceLine.Ordinate::joint).toList();
    }

    private static List<String> names(TrussModel truss) {
        return truss.members().stream().map(Member::name).toList();
    }

    private static Table forces(TrussModel truss, List<String> members) {
        return toFill(List.of(Column.left("Member"), Column.left("Force (" + new Notation(truss).forceLabel() + ")"),
                Column.left("Tension or compression")), members);
    }

    private static Table forces(Notation notation, List<List<Phrase>> rows) {
        return new Table(Phrase.EMPTY, List.of(Column.left("Member"), Column.right("Force (" + notation.forceLabel() + ")"),
                Column.left("Sense")), rows, true);
    }

    private static List<Phrase> row(Notation notation, String member, double newtons) {
        return List.of(Phrase.of(member), number(notation, newtons), Phrase.of(SenseWords.noun(newtons)));
    }

    private static Phrase number(Notation notation, double newtons) {
        return Phrase.of(Notation.three(notation.inForceUnit(newtons)));
    }

    private static Table toFill(List<Column> columns, int rows) {
        return toFill(columns, Collections.nCopies(rows, ROOM));
    }

    /** Empty cells beside what each row is about. */
    private static Table toFill(List<Column> columns, List<String> heads) {
        return new Table(Phrase.EMPTY, columns, heads.stream().map(head -> IntStream.range(0, columns.size())
                .mapToObj(i -> Phrase.of(i == 0 ? head : ROOM)).toList()).toList(), true);
    }

    /** The figures and tables of an explanation. */
    private static List<Block> shown(List<Block> blocks) {
        List<Block> shown = blocks.stream().flatMap(Question::shown).toList();
        return shown.isEmpty() ? blocks : shown;
    }

    private static Stream<Block> shown(Block block) {
        return block instanceof Section section ? section.blocks().stream().flatMap(Question::shown)
                : block instanceof Figure || block instanceof Table ? Stream.of(block) : Stream.empty();
    }
}
