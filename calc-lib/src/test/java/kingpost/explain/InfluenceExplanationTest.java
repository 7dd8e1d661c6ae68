package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kingpost.GoldenFile;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.LoadedChord;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.moving.WheelTrain;
import kingpost.render.PlainRenderer;
import kingpost.statics.Source;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class InfluenceExplanationTest {

    private static final TrussModel TRUSS = SampleTrusses.footbridge();

    private static InfluenceLine line(Effect effect) {
        return InfluenceLine.of(TRUSS, effect, LoadedChord.atSupports(TRUSS));
    }

    private static InfluenceLine member(String name) {
        return line(new Effect.OfMember(TRUSS.member(name).orElseThrow()));
    }

    private static InfluenceLine reaction() {
        return line(new Effect.OfReaction(Source.OfReaction.of(TRUSS).get(1)));
    }

    private static TrainEffect train(InfluenceLine line) {
        return TrainEffect.of(line, WheelTrain.of(TRUSS, List.of(Quantity.of(1, StructuralUnits.kip),
                Quantity.of(6, StructuralUnits.ft), Quantity.of(3, StructuralUnits.kip))));
    }

    private static UniformEffect uniform(InfluenceLine line) {
        return UniformEffect.of(line, Quantity.of(0.2, StructuralUnits.klf));
    }

    private static String text(Derivation derivation) {
        return new PlainRenderer().render(WordsOnly.of(derivation));
    }

    @Test
    void readsAsTheGoldenFilesHaveIt() {
        GoldenFile.check("kingpost/explain/moving/member.txt", text(InfluenceExplanation.of(member("U1-L2"))));
        GoldenFile.check("kingpost/explain/moving/reaction.txt", text(InfluenceExplanation.of(reaction())));
        GoldenFile.check("kingpost/explain/moving/shear.txt",
                text(InfluenceExplanation.of(line(new Effect.OfShear("L1", "L2")))));
        GoldenFile.check("kingpost/explain/moving/train.txt", text(MovingLoadExplanation.of(train(member("U1-L2")))));
        GoldenFile.check("kingpost/explain/moving/uniform.txt", text(MovingLoadExplanation.of(uniform(member("U1-L2")))));
    }

    @Test
    void writesWholeSentences() {
        Stream<InfluenceLine> lines = Stream.concat(Stream.of(reaction(), line(new Effect.OfShear("L2", "L3"))),
                TRUSS.members().stream().map(m -> member(m.name())));
        lines.forEach(line -> {
            for (Derivation derivation : List.of(InfluenceExplanation.of(line), MovingLoadExplanation.of(train(line)),
                    MovingLoadExplanation.of(uniform(line)))) {
                WordsOnly.phrases(derivation.blocks()).forEach(InfluenceExplanationTest::check);
            }
        });
    }

    private static void check(Phrase phrase) {
        String said = new PlainRenderer().render(new kingpost.derivation.Block.Prose(phrase)).replace('\n', ' ').strip();
        assertFalse(said.contains("  ") || said.contains(" ,") || said.contains(" .") || said.contains("..")
                || said.contains("null"), said);
        assertTrue(said.endsWith(".") || said.endsWith(":"), said);
    }
}
