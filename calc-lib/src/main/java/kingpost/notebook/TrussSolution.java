package kingpost.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.diagram.ForceFigure;
import kingpost.exact.Surd;
import kingpost.explain.ChecksExplanation;
import kingpost.explain.ForceDiagramExplanation;
import kingpost.explain.ForcePolygonExplanation;
import kingpost.explain.JointExplanation;
import kingpost.explain.Question;
import kingpost.explain.ResultsTable;
import kingpost.explain.SecondLookExplanation;
import kingpost.explain.SolutionExplanation;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.statics.Checks;
import kingpost.statics.SecondLook;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Solution.Sense;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** A solved truss in a notebook: forces as quantities, and the working behind them. Tension positive. */
public final class TrussSolution implements Showable, NamesInQuotes {

    private final Solution solution;

    TrussSolution(Solution solution) {
        this.solution = solution;
    }

    /** Steps, equations, answers and checks as records. */
    public Solution facts() {
        return solution;
    }

    /**
     * The force in a member, tension positive, in the truss's unit of force; nothing is rounded.
     *
     * @throws kingpost.units.CalculationException when the truss has no such member
     */
    public Quantity force(String member) {
        return inTrussUnit(result(member).force());
    }

    /** Whether a member is in tension, in compression, or carries nothing. */
    public Sense sense(String member) {
        return result(member).sense();
    }

    /** A member's force as fraction times surd in the truss's unit of force, where coordinates and loads allow it. */
    public Optional<Surd> exact(String member) {
        return result(member).exact();
    }

    /**
     * What the support at a joint does to the truss.
     *
     * @throws kingpost.units.CalculationException when the joint is not there or not supported
     */
    public ReactionForce reaction(String joint) {
        String name = TrussNames.support(truss(), joint);
        double x = 0;
        double y = 0;
        double z = 0;
        List<ReactionForce.Component> components = new ArrayList<>();
        for (ReactionResult r : solution.reactions()) {
            if (r.reaction().joint().equals(name)) {
                Direction direction = r.reaction().direction();
                x += r.force() * direction.cosX();
                y += r.force() * direction.cosY();
                z += r.force() * direction.cosZ();
                components.add(new ReactionForce.Component(r.reaction().symbol(), direction.words(),
                        inTrussUnit(r.force())));
            }
        }
        return new ReactionForce(name, inTrussUnit(x), inTrussUnit(y), inTrussUnit(z), components);
    }

    /** The whole worked solution, in the order in which it is taught. */
    public Working derivation() {
        return new Working(solution, Exhibit.of(SolutionExplanation.of(solution)));
    }

    /** One joint: its free body, its equations, its answers. */
    public Working joint(String joint) {
        return new Working(solution, Exhibit.of(JointExplanation.of(solution, TrussNames.joint(truss(), joint))));
    }

    /** The truss with its forces drawn on it. */
    public Working diagram() {
        return new Working(solution, Truss.figure(ForceFigure.of(solution), truss().name() + ", forces"));
    }

    /** The forces on one joint drawn to scale from tip to tail, clockwise round it. */
    public Answer<ForcePolygon> polygon(String joint) {
        ForcePolygon facts = ForcePolygon.of(solution, TrussNames.joint(truss(), joint));
        return Answer.to(Question.polygon(facts), facts, Exhibit.of(ForcePolygonExplanation.of(facts)));
    }

    /** The reciprocal diagram with the spaces it belongs to, and the order of drawing; or why there is none. */
    public Answer<ForceDiagram> forceDiagram() {
        ForceDiagram facts = ForceDiagram.of(solution);
        return Answer.to(Question.forceDiagram(facts), facts, Exhibit.of(ForceDiagramExplanation.of(facts)));
    }

    /** Unused equations, equilibrium of the whole, and a second method. */
    public Answer<Checks> checks() {
        return Answer.check(solution.checks(), Exhibit.of(ChecksExplanation.of(solution)));
    }

    /**
     * A second pair of eyes: loads, reactions, what is left over at each joint, and every force found again, by a route
     * that shares nothing with the derivation's; the verdict first.
     */
    public Answer<SecondLook> secondLook() {
        SecondLook look = SecondLook.of(solution);
        return Answer.check(look, Exhibit.of(SecondLookExplanation.of(solution, look)));
    }

    @Override
    public List<String> names(String method) {
        return TrussNames.of(truss(), method);
    }

    /** The tables of members and reactions. */
    @Override
    public Map<String, Object> show() {
        return exhibit().show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : Editions.of(solution, edition);
    }

    @Override
    public String toString() {
        return exhibit().toString();
    }

    private Exhibit exhibit() {
        return Exhibit.of(List.of(ResultsTable.members(solution), ResultsTable.reactions(solution)), "forces",
                ResultNumbers.of(solution));
    }

    private TrussModel truss() {
        return solution.truss();
    }

    private MemberResult result(String name) {
        Member member = TrussNames.member(truss(), name);
        return solution.members().stream().filter(r -> r.member().equals(member)).findFirst().orElseThrow();
    }

    private Quantity inTrussUnit(double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).to(truss().forceUnit());
    }
}
