package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.graphic.Cause;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForceDiagram.Drawn;
import kingpost.graphic.ForceDiagram.Line;
import kingpost.graphic.ForceDiagram.NotDrawn;
import kingpost.graphic.ForceDiagram.Space;
import kingpost.graphic.ForceDiagram.Step;
import kingpost.graphic.ForceDiagram.Why;
import kingpost.statics.Solution.Sense;
import kingpost.truss.Member;

/** The reciprocal diagram of a truss: its spaces, the order in which its lines are drawn, how to read it, its check. */
public final class ForceDiagramExplanation {

    private final Notation notation;
    private final CauseWords causes;

    private ForceDiagramExplanation(Notation notation) {
        this.notation = notation;
        this.causes = new CauseWords(notation);
    }

    public static Derivation of(ForceDiagram diagram) {
        ForceDiagramExplanation explanation = new ForceDiagramExplanation(new Notation(diagram.truss()));
        return new Derivation(diagram.truss().name() + ": force diagram", diagram.accept(new ForceDiagram.Visitor<>() {
            @Override
            public List<Block> drawn(Drawn drawn) {
                return explanation.drawn(drawn);
            }

            @Override
            public List<Block> notDrawn(NotDrawn result) {
                return List.of(new Prose(explanation.why(result.why())));
            }
        }));
    }

    private List<Block> drawn(Drawn diagram) {
        List<Block> spaces = new ArrayList<>(List.of(new Prose(spaces(diagram))));
        spaces.addAll(Pictures.forceDiagram(diagram));
        List<Block> joints = new ArrayList<>();
        if (!diagram.steps().isEmpty()) {
            joints.add(Prose.of("At a joint with one space whose point is still missing, draw a parallel to each of its two"
                    + " members next to that space, through the points of the spaces on their other sides. Where the two"
                    + " meet is the point."));
            joints.add(new Listing(true, diagram.steps().stream().map(step -> step(diagram, step)).toList()));
        }
        joints.add(members(diagram));
        joints.add(new Prose(reading(diagram)));
        return List.of(Section.of("Spaces", spaces),
                Section.of("Loads and reactions", List.of(new Prose(outside(diagram)), outsideTable(diagram))),
                Section.of("Joint by joint", joints), Section.of("Check", List.of(new Prose(check(diagram)))));
    }

    private Phrase spaces(Drawn diagram) {
        int outside = diagram.outside().size();
        int inside = diagram.spaces().size() - outside;
        Phrase said = Phrase.of("Take the supports away and put their reactions in their place. The "
                + Series.number(outside) + " outside forces part the paper round the truss into as many spaces, which are"
                + " lettered clockwise from the left; " + (inside == 0 ? "the members enclose none."
                : "the " + (inside == 1 ? "space" : Series.number(inside) + " spaces")
                + " between the members " + (inside == 1 ? "is" : "are") + " numbered.")
                + " Every force lies between two spaces and is named by them, in the order in which one meets them going"
                + " clockwise round its joint; in the diagram the force is the line between the two points of the same"
                + " names in small letters.");
        List<String> passed = passed(diagram);
        return passed.isEmpty() ? said : said.sentence("Passed over "
                + (passed.size() == 1 ? "is the letter " : "are the letters ")
                + OpeningExplanation.plain(passed) + ", as " + (passed.size() == 1 ? "it names a joint."
                : "they name joints."));
    }

    /** Letters before the last one used that are names of joints. */
    private static List<String> passed(Drawn diagram) {
        String last = diagram.spaces().get(diagram.outside().size() - 1).name();
        return diagram.truss().joints().stream().map(j -> j.name().toUpperCase(java.util.Locale.ROOT))
                .filter(name -> name.length() == 1 && Character.isLetter(name.charAt(0)) && name.compareTo(last) < 0)
                .sorted().toList();
    }

    private Phrase outside(Drawn diagram) {
        Phrase first = Phrase.of("Draw the outside forces to scale from tip to tail, going clockwise round the truss. ");
        return diagram.gap() == 0 ? first.text("The last one ends where the first began.")
                : first.text("The last one ends where the first began, to within ")
                .math(Notation.three(diagram.gap() / diagram.scale())).text(" of the largest force.");
    }

    private Table outsideTable(Drawn diagram) {
        return new Table(Phrase.of("Outside forces, clockwise"), List.of(Column.left("Line"), Column.left("Force"),
                Column.left("On joint"), Column.right("Length (" + notation.forceLabel() + ")"), Column.left("Acts")),
                diagram.outside().stream().map(line -> List.of(Phrase.of(diagram.name(line)),
                        Series.capital(causes.of(line.cause())), Phrase.of(line.joint()), length(line),
                        Phrase.of(Heading.words(line.vector())))).toList(), true);
    }

    private Phrase length(Line line) {
        return Phrase.of(Notation.three(notation.inForceUnit(line.sense() == Sense.ZERO ? 0 : Math.abs(line.force()))));
    }

    private Phrase step(Drawn diagram, Step step) {
        Phrase said;
        if (step instanceof Step.AtJoint at) {
            said = Phrase.of("Joint ").strong(at.joint()).text(": the parallel to " + at.one().name() + " through "
                    + point(diagram, other(diagram, at.one(), at.found())) + " and the parallel to " + at.other().name()
                    + " through " + point(diagram, other(diagram, at.other(), at.found())) + " meet in ")
                    .strong(point(diagram, at.found())).text(". ").then(measured(diagram, List.of(at.one(), at.other())));
        } else {
            Step.LaidOff laid = (Step.LaidOff) step;
            said = Phrase.of("No joint is left with a single point missing. Member " + laid.member().name()
                    + " is known from the solution: laid off from " + point(diagram, laid.from()) + ", its force leads to ")
                    .strong(point(diagram, step.found())).text(". ").then(measured(diagram, List.of(laid.member())));
        }
        return step.closing().isEmpty() ? said : said.sentence(closing(diagram, step.closing()));
    }

    private static int other(Drawn diagram, Member member, int space) {
        Line line = diagram.line(member);
        return line.from() == space ? line.to() : line.from();
    }

    private static String point(Drawn diagram, int space) {
        return diagram.spaces().get(space).point();
    }

    private Phrase measured(Drawn diagram, List<Member> members) {
        return Series.and(members, member -> {
            Line line = diagram.line(member);
            return line.sense() == Sense.ZERO
                    ? Phrase.of(diagram.name(line) + " has no length (" + member.name() + " carries nothing)")
                    : Phrase.of(diagram.name(line) + " measures ").math(notation.answer(Math.abs(line.force())))
                    .text(" (" + SenseWords.noun(line.force()) + " in " + member.name() + ")");
        }).text(".");
    }

    private Phrase closing(Drawn diagram, List<Member> members) {
        boolean one = members.size() == 1;
        return Phrase.of(one ? "That closes the line " : "That closes the lines ")
                .then(Series.and(members, member -> Phrase.of(diagram.name(diagram.line(member)))))
                .text((one ? ", which has" : ", which have") + " to come out parallel to ")
                .then(Series.names(members.stream().map(Member::name).toList())).text(": ")
                .then(measured(diagram, members));
    }

    private Table members(Drawn diagram) {
        return new Table(Phrase.of("Lines of the members"), List.of(Column.left("Member"), Column.left("Line"),
                Column.right("Length (" + notation.forceLabel() + ")"), Column.left("Sense")),
                diagram.members().stream().map(line -> List.of(
                        Phrase.of(((Cause.OfMember) line.cause()).member().name()), Phrase.of(diagram.name(line)),
                        length(line), Phrase.of(line.sense() == Sense.ZERO ? "no force"
                                : SenseWords.noun(line.force())))).toList(), true);
    }

    /** How a sense is read, on the first member that has one. */
    private static Phrase reading(Drawn diagram) {
        return diagram.members().stream().filter(line -> line.sense() != Sense.ZERO).findFirst().map(line -> {
            Member member = ((Cause.OfMember) line.cause()).member();
            Space from = diagram.spaces().get(line.from());
            Space to = diagram.spaces().get(line.to());
            boolean pulls = line.force() > 0;
            return Phrase.of("To read a sense, go clockwise round a joint. At " + line.joint() + " one crosses "
                    + member.name() + " from space " + from.name() + " to space " + to.name() + "; in the diagram the way from "
                    + from.point() + " to " + to.point() + " runs " + Heading.words(line.vector()) + ", which at that joint is "
                    + (pulls ? "away from it" : "towards it") + ": " + member.name() + (pulls ? " pulls, tension."
                    : " pushes, compression."));
        }).orElse(Phrase.of("No member carries anything."));
    }

    private Phrase check(Drawn diagram) {
        Phrase said = Phrase.of("Each point was found from two lines only, so the lines between points found already are"
                + " checks. ");
        if (diagram.worst() == 0) {
            return said.text("The diagram closes exactly, and every line has the direction and the length that the equations"
                    + " gave.");
        }
        said = said.text("Measured against the largest force, ").math(notation.answer(diagram.scale()))
                .text(", the gap of the outside forces is ").math(Notation.three(diagram.gap() / diagram.scale()))
                .text(", and no line differs from the force that the equations gave by more than ")
                .math(Notation.three(diagram.difference() / diagram.scale()));
        return diagram.closes() ? said.text(", which is rounding.")
                : said.text(", which is more than rounding. ").strong("Do not use these answers").text(".");
    }

    private Phrase why(Why why) {
        if (why instanceof Why.Crossing crossing) {
            return Phrase.of("There is no force diagram of this truss: " + crossing.one().name() + " and "
                    + crossing.other().name() + " cross, and where members cross, the spaces on the paper are not those"
                    + " between two forces. Each joint still has its force polygon.");
        }
        if (why instanceof Why.InnerForce inner) {
            return Phrase.of("There is no force diagram of this truss: ").then(causes.of(inner.cause()))
                    .text(" acts at " + inner.joint() + ", which the members enclose, so that it parts no two spaces outside."
                            + " Each joint still has its force polygon.");
        }
        if (why instanceof Why.InPieces pieces) {
            return Phrase.of("There is no force diagram of this truss: no member joins the piece with " + pieces.one()
                    + " to the piece with " + pieces.other() + ". Draw a diagram for each piece.");
        }
        return Phrase.of("There is no force diagram of this truss, because no load acts on it.");
    }
}
