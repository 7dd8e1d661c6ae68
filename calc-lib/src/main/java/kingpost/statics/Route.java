package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.statics.Step.WhyReactions;

/**
 * The way through a truss: joints alone where they reach every member, else the reactions of the whole truss first
 * and then joints.
 *
 * @param reactionsFirst why the reactions come first, or empty
 * @param joints         the joints in order
 */
record Route(Optional<WhyReactions> reactionsFirst, JointPlanner joints) {

    static Route of(Network network, Inspections inspections) {
        JointPlanner alone = new JointPlanner(network, inspections).run();
        if (alone.isComplete() || !hasReactionsOfOneBody(network)) {
            return new Route(Optional.empty(), alone);
        }
        WhyReactions why = alone.turns().isEmpty() ? WhyReactions.NO_JOINT_TO_START : WhyReactions.JOINTS_STOP_SHORT;
        return new Route(Optional.of(why), new JointPlanner(network, inspections).withReactions().run());
    }

    /** As many reactions as a body has equations of equilibrium: three in the plane. */
    private static boolean hasReactionsOfOneBody(Network network) {
        return network.dimension() == 2 && network.reactions() == 3;
    }

    /** Joints that still have unknowns where the way ends; empty when it reaches everything. */
    List<String> stuckAt(Network network) {
        List<String> stuck = new ArrayList<>();
        for (int j = 0; j < network.joints(); j++) {
            if (!joints.progress().unknownsAt(j, Integer.MAX_VALUE).isEmpty()) {
                stuck.add(network.name(j));
            }
        }
        return stuck;
    }
}
