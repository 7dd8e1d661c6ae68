package kingpost.notebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.diagram.InfluenceFigure;
import kingpost.exact.Surd;
import kingpost.explain.InfluenceExplanation;
import kingpost.explain.MovingLoadExplanation;
import kingpost.explain.Question;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.LoadedChord;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.moving.WheelTrain;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;

/**
 * An influence line in a notebook. Without {@link #along} the load moves on the level of the supports.
 *
 * <pre>{@code
 * var line = bridge.influence("U1-L2");
 * line.train(35, 4.3, 145, 4.3, 145)            // load, distance, load ... in the truss's units
 * line.uniform(8)                               // force per length in the truss's units
 * }</pre>
 */
public final class Influence implements Showable, NamesInQuotes {

    private final TrussModel truss;
    private final Function<LoadedChord, Effect> effect;
    private final Optional<LoadedChord> chord;
    private InfluenceLine line;

    Influence(TrussModel truss, Function<LoadedChord, Effect> effect, Optional<LoadedChord> chord) {
        this.truss = truss;
        this.effect = effect;
        this.chord = chord;
    }

    /**
     * The same for a load that moves over these joints.
     *
     * @param joints from left to right, as in {@code "U1 U2 U3"}; spaces and commas part them
     */
    public Influence along(String joints) {
        List<String> names = Stream.of((joints == null ? "" : joints).strip().split("[\\s,;]+")).filter(name -> !name.isEmpty())
                .map(name -> TrussNames.joint(truss, name)).toList();
        return new Influence(truss, effect, Optional.of(LoadedChord.through(truss, names)));
    }

    /** The ordinates as records. */
    public InfluenceLine facts() {
        if (line == null) {
            LoadedChord along = chord.orElseGet(() -> LoadedChord.atSupports(truss));
            line = InfluenceLine.of(truss, effect.apply(along), along);
        }
        return line;
    }

    /**
     * The effect of a load of 1 on a joint of the loaded chord.
     *
     * @throws CalculationException when the chord has no such joint
     */
    public double ordinate(String joint) {
        return at(joint).value();
    }

    /** The same as fraction times surd, where coordinates are rational. */
    public Optional<Surd> exact(String joint) {
        return at(joint).exact();
    }

    /** The largest effect of wheels, written as load, distance, load ... in the truss's units. */
    public Answer<TrainEffect> train(double... loadsAndDistances) {
        return answer(WheelTrain.of(truss, IntStream.range(0, loadsAndDistances.length).mapToObj(i ->
                Quantity.of(loadsAndDistances[i], i % 2 == 0 ? truss.forceUnit() : truss.lengthUnit())).toList()));
    }

    /** The largest effect of wheels: {@code train(kip(8), ft(14), kip(32))}. */
    public Answer<TrainEffect> train(Quantity... loadsAndDistances) {
        return answer(WheelTrain.of(truss, java.util.Arrays.asList(loadsAndDistances)));
    }

    private Answer<TrainEffect> answer(WheelTrain train) {
        TrainEffect facts = TrainEffect.of(facts(), train);
        return Answer.to(Question.train(facts), facts, Exhibit.of(MovingLoadExplanation.of(facts)));
    }

    /** The largest effect of a uniform load of any extent, in the truss's force per length. */
    public Answer<UniformEffect> uniform(double intensity) {
        return uniform(Quantity.of(intensity, truss.forceUnit().divide(truss.lengthUnit())));
    }

    /** The largest effect of a uniform load of any extent: {@code uniform(kN_per_m(8))}. */
    public Answer<UniformEffect> uniform(Quantity intensity) {
        UniformEffect facts = UniformEffect.of(facts(), intensity);
        return Answer.to(Question.uniform(facts), facts, Exhibit.of(MovingLoadExplanation.of(facts)));
    }

    /** The truss with the influence line beneath it. */
    public Exhibit diagram() {
        return Truss.figure(InfluenceFigure.of(facts()), truss.name() + ", influence line");
    }

    @Override
    public List<String> names(String method) {
        return switch (method) {
            case "along" -> TrussNames.of(truss, "joint");
            case "ordinate", "exact" -> facts().ordinates().stream().map(InfluenceLine.Ordinate::joint).toList();
            default -> List.of();
        };
    }

    /** How the ordinates come about, and the line. */
    @Override
    public Map<String, Object> show() {
        return exhibit().show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return Optional.of(edition == Edition.SOLUTION ? show() : Editions.of(Question.influence(facts()), edition));
    }

    @Override
    public String toString() {
        return exhibit().toString();
    }

    private Exhibit exhibit() {
        return Exhibit.of(InfluenceExplanation.of(facts()));
    }

    private InfluenceLine.Ordinate at(String joint) {
        return facts().ordinates().stream().filter(o -> o.joint().equals(joint)).findFirst()
                .orElseThrow(() -> new CalculationException("Joint " + joint + ": the loaded chord has none of that name; its"
                        + " joints are " + String.join(", ", facts().ordinates().stream()
                        .map(InfluenceLine.Ordinate::joint).toList()) + "."));
    }
}
