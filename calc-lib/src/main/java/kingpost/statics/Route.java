package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.statics.Step.WhyReactions;

/**
 * The way through a truss: joints alone where they reach every member; else the reactions of the whole truss first
 * and then joints; and where joints get stuck, something that opens the truss again.
 *
 * @param reactionsFirst why the reactions come first, or empty
 * @param reactions      the equations of the whole truss that give reactions
 * @param joints         the moves in order
 */
record Route(Optional<WhyReactions> reactionsFirst, List<BodyPlan.Planned> reactions, JointPlanner joints) {

    static Route of(Network network, Inspections inspections) {
        JointPlanner alone = new JointPlanner(network, inspections).run();
        if (alone.isComplete()) {
            return new Route(Optional.empty(), List.of(), alone);
        }
        List<BodyPlan.Planned> reactions = network.reactions() <= LARGEST_SUPPORT
                ? BodyPlan.ofReactions(network, Body.whole(network)) : List.of();
        if (reactions.isEmpty()) {
            return new Route(Optional.empty(), reactions, alone);
        }
        WhyReactions why = alone.moves().isEmpty() ? WhyReactions.NO_JOINT_TO_START : WhyReactions.JOINTS_STOP_SHORT;
        List<Integer> known = reactions.stream().map(p -> p.unknown().unknown()).toList();
        JointPlanner joints = new JointPlanner(network, inspections).with(known).run();
        return new Route(Optional.of(why), reactions, joints);
    }

    /** More reactions than this are no body's own, and looking at every pair of them would take long. */
    private static final int LARGEST_SUPPORT = 12;

    /**
     * Goes on where joints got stuck: opens the truss, works joints again, and so on. For a determinate truss; any
     * other may have nothing that opens it.
     */
    Route opened(Network network) {
        Openings openings = new Openings(network, joints);
        boolean more = true;
        while (more && !joints.isComplete()) {
            Optional<Move> move = openings.next();
            move.ifPresent(joints::make);
            move.flatMap(openings::wholeAfter).ifPresent(joints::make);
            joints.run();
            more = move.isPresent();
        }
        return this;
    }

    boolean isComplete() {
        return joints.isComplete();
    }

    List<Move> moves() {
        return joints.moves();
    }

    Progress progress() {
        return joints.progress();
    }

    /** Joints that still have unknowns where the way ends; empty when it reaches everything. */
    List<String> stuckAt(Network network) {
        List<String> stuck = new ArrayList<>();
        for (int j = 0; j < network.joints(); j++) {
            if (!progress().unknownsAt(j, Integer.MAX_VALUE).isEmpty()) {
                stuck.add(network.name(j));
            }
        }
        return stuck;
    }
}
