package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Phrase;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Vector;
import kingpost.truss.Load;
import kingpost.truss.LoadCases;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;

/** The first page: what is given, in what units and signs, and what is to be found. */
final class Given {

    private static final int FEW = 10;

    private final Notation notation;
    private final TrussModel truss;
    private final Solution solution;

    Given(Notation notation, Solution solution) {
        this.notation = notation;
        this.truss = notation.truss();
        this.solution = solution;
    }

    List<Block> sections() {
        return List.of(Section.of("Given", given()), Section.of("Find", List.of(find())));
    }

    private List<Block> given() {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(Pictures.truss(truss));
        List<Phrase> data = new ArrayList<>(truss.supports().stream().map(this::support).toList());
        data.addAll(loads());
        blocks.add(new Listing(false, data));
        if (truss.cases().cases().size() > 1) {
            blocks.add(new Prose(Phrase.of("These are the loads of all load cases at once, ").then(Series.names(
                    truss.cases().cases().stream().map(LoadCases.LoadCase::name).toList())).text(", without factors.")));
        }
        blocks.addAll(new GatheredLoads(notation, truss).blocks());
        blocks.add(Prose.of("Lengths are in " + notation.lengthLabel() + ", forces in " + notation.forceLabel()
                + ". " + (truss.isSpace()
                ? "Take x to the right, y up and z towards the reader, and moments positive by the right-hand rule."
                : "Take x to the right and y up, and moments positive counter-clockwise.") + " A member's force is positive"
                + " when the member pulls on its joints (tension) and negative when it pushes on them (compression);"
                + " reactions are the forces that the supports exert on the truss."));
        blocks.add(Prose.of("Answers are shown to three significant figures. What is carried from one step to the"
                + " next is the unrounded value, so a sum of the printed figures may miss by one in the last place."));
        return blocks;
    }

    private Prose find() {
        return new Prose(Phrase.of("The force in each of the " + truss.members().size()
                + " members, and whether it is tension or compression; and the reactions ")
                .then(Series.and(symbols(solution.reactions()), Phrase::of)).text("."));
    }

    private List<kingpost.derivation.Expression> symbols(List<Solution.ReactionResult> reactions) {
        return reactions.stream().map(result -> notation.symbol(result.reaction())).toList();
    }

    private Phrase support(Support support) {
        List<Phrase> unknown = solution.reactions().stream().map(Solution.ReactionResult::reaction)
                .filter(reaction -> reaction.joint().equals(support.joint()))
                .filter(reaction -> support.reactions().contains(reaction.direction()))
                .map(reaction -> Phrase.of(notation.symbol(reaction)).text(held(support, reaction))).toList();
        return Phrase.of("Joint ").strong(support.joint()).text(" is held by a "
                + support.kind().name().toLowerCase(Locale.ROOT) + ", which can exert ")
                .then(Series.and(unknown)).text(".");
    }

    private static String held(Support support, Source.OfReaction reaction) {
        String way = " (positive when it acts " + Heading.words(Heading.vector(reaction.direction())) + ")";
        return support.reactions().size() > 1 ? "" : way;
    }

    private List<Phrase> loads() {
        if (truss.loads().isEmpty()) {
            return List.of(Phrase.of("No load acts."));
        }
        if (truss.loads().size() <= FEW) {
            return truss.loads().stream().map(load -> load(load).text(".")).toList();
        }
        return List.of(Phrase.of("Loads of ").then(Series.and(truss.loads().stream().limit(FEW).map(this::shortly).toList()))
                .text(", and so on: " + truss.loads().size() + " loads in all."));
    }

    private Phrase shortly(Load load) {
        Vector way = Heading.vector(load.direction());
        return Phrase.of(notation.loadAmount(load)).text(" " + (Heading.isUpright(way) ? Heading.words(way)
                : load instanceof Load.Components ? "by components" : load.direction().words()) + " at ")
                .strong(load.joint());
    }

    private Phrase load(Load load) {
        if (load instanceof Load.Components parts && !Heading.isUpright(Heading.vector(load.direction()))) {
            Phrase said = Phrase.of("A load with the components ").math(Notation.given(parts.fx()));
            Phrase both = truss.isSpace() ? said.text(" along x, ").math(Notation.given(parts.fy())).text(" along y and ")
                    .math(Notation.given(parts.fz())).text(" along z")
                    : said.text(" along x and ").math(Notation.given(parts.fy())).text(" along y");
            return both.text(" acts on joint ").strong(load.joint());
        }
        Phrase size = Phrase.of("A load of ").math(notation.loadAmount(load));
        Vector way = Heading.vector(load.direction());
        return Heading.isUpright(way)
                ? size.text(" acts " + Heading.words(way) + " on joint ").strong(load.joint())
                : size.text(" (" + load.direction().words() + ") acts on joint ").strong(load.joint());
    }
}
