package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.statics.Step.JointCount;
import kingpost.statics.Step.Selection;
import kingpost.statics.Step.WhyReactions;
import kingpost.truss.TrussModel;

/**
 * The plan of the work: which joint comes next, how many unknowns each other joint has, and why; without any force.
 *
 * @param reactionsFirst why the reactions come first; empty where joints alone reach every member
 * @param turns          the joints in order
 * @param openings       what opens the truss again where joints get stuck; empty for a simple truss
 * @param stuckAt        joints with unknowns that this order does not reach; empty for a determinate truss
 */
public record JointOrder(Optional<WhyReactions> reactionsFirst, List<Turn> turns, List<Opening> openings,
                         List<String> stuckAt) {

    public JointOrder {
        turns = List.copyOf(turns);
        openings = List.copyOf(openings);
        stuckAt = List.copyOf(stuckAt);
    }

    /**
     * @param number    1 for the first joint
     * @param joint     its name
     * @param selection the look round before it was chosen
     * @param gives     what its equations give
     */
    public record Turn(int number, String joint, Selection selection, List<Source> gives) {
        public Turn {
            gives = List.copyOf(gives);
        }
    }

    /**
     * What is done when no joint can be worked.
     *
     * @param after how many joints were worked before it
     * @param kind  a section, the whole truss after it, two bodies with the same two unknowns, or joints solved together
     * @param names members cut, or joints solved together; none for the whole truss
     * @param gives what it gives
     * @param stuck joints not yet done when the work stopped
     */
    public record Opening(int after, Kind kind, List<String> names, List<Source> gives, List<JointCount> stuck) {
        public Opening {
            names = List.copyOf(names);
            gives = List.copyOf(gives);
            stuck = stuck instanceof LookRound ? stuck : List.copyOf(stuck);
        }

        /** What opens a truss. */
        public enum Kind { SECTION, WHOLE_TRUSS, TWO_BODIES, JOINTS_TOGETHER }
    }

    /** The order in which the joints of a truss are worked. */
    public static JointOrder of(TrussModel model) {
        Network network = new Network(model);
        Route route = Route.of(network, new Inspections(network));
        boolean determinate = Determinacies.of(network, route) instanceof Determinacy.Determinate;
        return of(network, determinate ? route.opened(network) : route);
    }

    private static JointOrder of(Network network, Route route) {
        List<Turn> turns = new ArrayList<>();
        List<Opening> openings = new ArrayList<>();
        for (Move move : route.moves()) {
            LookRound look = new LookRound(network, route.progress(), move.turn());
            List<Source> gives = move.unknowns().stream().map(network::source).toList();
            if (move instanceof Move.AtJoint at) {
                turns.add(new Turn(at.number(), network.name(at.joint()), new Selection(look, at.reason()), gives));
            } else if (move instanceof Move.AtSection section) {
                List<String> cut = Cut.of(network, section.part()).stream().map(m -> network.member(m).name()).toList();
                openings.add(new Opening(turns.size(), Opening.Kind.SECTION, cut, gives, look));
            } else if (move instanceof Move.OfWhole) {
                openings.add(new Opening(turns.size(), Opening.Kind.WHOLE_TRUSS, List.of(), gives, look));
            } else if (move instanceof Move.TwoBodies two) {
                List<String> cut = two.entries().stream().flatMap(e -> Cut.of(network, e.part()).stream())
                        .map(m -> network.member(m).name()).distinct().toList();
                openings.add(new Opening(turns.size(), Opening.Kind.TWO_BODIES, cut, gives, look));
            } else if (move instanceof Move.Together together) {
                List<String> joints = together.joints().stream().map(network::name).toList();
                openings.add(new Opening(turns.size(), Opening.Kind.JOINTS_TOGETHER, joints, gives, look));
            }
        }
        return new JointOrder(route.reactionsFirst(), turns, openings, route.stuckAt(network));
    }
}
