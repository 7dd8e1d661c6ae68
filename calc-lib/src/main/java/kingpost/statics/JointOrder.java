package kingpost.statics;

import java.util.List;
import java.util.Optional;
import kingpost.statics.Step.Selection;
import kingpost.statics.Step.WhyReactions;
import kingpost.truss.TrussModel;

/**
 * The plan of the work: which joint comes next, how many unknowns each other joint has, and why; without any force.
 *
 * @param reactionsFirst why the reactions come first; empty where joints alone reach every member
 * @param turns          the joints in order
 * @param stuckAt        joints with unknowns that this order does not reach; empty for a simple truss
 */
public record JointOrder(Optional<WhyReactions> reactionsFirst, List<Turn> turns, List<String> stuckAt) {

    public JointOrder {
        turns = List.copyOf(turns);
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

    /** The order in which the joints of a truss are worked. */
    public static JointOrder of(TrussModel model) {
        Network network = new Network(model);
        return of(network, Route.of(network, new Inspections(network)));
    }

    static JointOrder of(Network network, Route route) {
        Progress progress = route.joints().progress();
        List<Turn> turns = route.joints().turns().stream().map(t -> new Turn(t.number(), network.name(t.joint()),
                new Selection(new LookRound(network, progress, t.number()), t.reason()),
                t.unknowns().stream().map(network::source).toList())).toList();
        return new JointOrder(route.reactionsFirst(), turns, route.stuckAt(network));
    }
}
