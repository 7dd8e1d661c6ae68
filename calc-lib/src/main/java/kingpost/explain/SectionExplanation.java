package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.statics.Checks;
import kingpost.statics.SectionResult;
import kingpost.truss.Member;

/** The method of sections for members that were asked for, or why their section gives nothing and which one would. */
public final class SectionExplanation {

    private final Notation notation;

    private SectionExplanation(Notation notation) {
        this.notation = notation;
    }

    public static Derivation of(SectionResult result) {
        SectionExplanation explanation = new SectionExplanation(new Notation(result.truss()));
        List<Block> blocks = result.accept(new SectionResult.Visitor<>() {
            @Override
            public List<Block> solved(SectionResult.Solved solved) {
                return explanation.solved(solved);
            }

            @Override
            public List<Block> impossible(SectionResult.Impossible impossible) {
                return explanation.impossible(impossible);
            }
        });
        return new Derivation(result.truss().name() + ": section through "
                + OpeningExplanation.plain(names(result.asked())), blocks);
    }

    private List<Block> solved(SectionResult.Solved result) {
        List<Block> blocks = new ArrayList<>();
        if (!result.reactions().isEmpty()) {
            blocks.add(Section.of("Reactions", new ReactionsExplanation(notation).blocks(result.reactions().get(0))));
        }
        List<Block> cut = new ArrayList<>(new OpeningExplanation(notation, new Variety()).blocks(result.section()));
        if (!result.notFound().isEmpty()) {
            cut.add(new Prose(Phrase.of("No equation of this section leaves ")
                    .then(Series.and(names(result.notFound()).stream().map(Phrase::of).toList()))
                    .text(" alone; another section, or a joint, has to give " + (result.notFound().size() == 1 ? "it."
                            : "them."))));
        }
        cut.add(new Prose(check(result)));
        blocks.add(Section.of("The part cut free", cut));
        return blocks;
    }

    private static Phrase check(SectionResult.Solved result) {
        if (result.worst() == 0) {
            return Phrase.of("All joint equations, solved at once as a second method, give the same answers to the last"
                    + " figure.");
        }
        Phrase size = Phrase.of("All joint equations, solved at once as a second method, give the same answers; measured"
                + " against the largest force they differ by ").math(Notation.three(result.worst()));
        return result.worst() <= Checks.TOLERANCE ? size.text(", which is rounding.")
                : size.text(", which is more than rounding. ").strong("Do not use these answers").text(": the truss is"
                        + " close to a mechanism.");
    }

    private List<Block> impossible(SectionResult.Impossible result) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(why(result)));
        blocks.add(Prose.of(result.offer().isEmpty()
                ? "No section was found that leaves one of them alone; work the truss by its joints."
                : "A section through " + OpeningExplanation.plain(names(result.offer())) + " would do."));
        return blocks;
    }

    private static Phrase why(SectionResult.Impossible result) {
        String asked = OpeningExplanation.plain(names(result.asked()));
        String first = result.asked().get(0).name();
        return switch (result.why()) {
            case DOES_NOT_PART -> Phrase.of("With " + asked + " cut, the truss still hangs together: the ends of " + first
                    + " are joined through " + OpeningExplanation.plain(names(result.joinedBy()))
                    + ". A section has to part the truss in two.");
            case NOT_ONE_CUT -> Phrase.of("These members are more than one section: "
                    + OpeningExplanation.plain(names(result.surplus())) + (result.surplus().size() == 1 ? " has" : " have")
                    + " both ends on one side of it.");
            case TOO_MANY_UNKNOWNS -> Phrase.of("The section through " + asked + " parts the truss, but it meets more than"
                    + " three unknown forces, and no point or direction leaves one of them alone.");
            case NOT_INDEPENDENT -> Phrase.of("The section through " + asked + " parts the truss, but the forces it meets"
                    + " pass through one point or lie in one direction, so its equations cannot tell them apart.");
        };
    }

    private static List<String> names(List<Member> members) {
        return members.stream().map(Member::name).toList();
    }
}
