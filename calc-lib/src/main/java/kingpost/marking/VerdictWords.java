package kingpost.marking;

import java.util.stream.Collectors;

/** A verdict in a few words. */
final class VerdictWords implements Verdict.Visitor<String> {

    @Override
    public String right(Verdict.Right verdict) {
        return verdict.coarse() ? "right, to too few figures" : verdict.early() ? "right, but rounded early" : "right";
    }

    @Override
    public String slipped(Verdict.Slipped verdict) {
        return verdict.candidates().stream().map(slip -> slip.kind().words()).distinct()
                .collect(Collectors.joining(", or "));
    }

    @Override
    public String followThrough(Verdict.FollowThrough verdict) {
        boolean convention = verdict.from().stream().allMatch(slip -> slip.kind() == Slip.Kind.SENSE_REVERSED
                && slip.subject().isEmpty());
        if (convention) {
            return "right, with senses counted the other way round";
        }
        return "follows from the slip " + verdict.from().stream().map(VerdictWords::at).distinct()
                .collect(Collectors.joining(" and ")).replace(" and with ", " and ");
    }

    private static String at(Slip slip) {
        return slip.where() instanceof Slip.Place.AtJoint joint ? "at joint " + joint.joint()
                : slip.where() instanceof Slip.Place.AtJoints joints ? "at joints " + String.join(", ", joints.joints())
                : slip.where() instanceof Slip.Place.AtSection section ? "at the section through "
                + String.join(", ", section.cut())
                : slip.where() instanceof Slip.Place.InReactions ? "in the reactions"
                : slip.kind() == Slip.Kind.WRONG_PANELS ? "with the panels"
                : slip.subject().isEmpty() ? "made throughout" : "with " + slip.subject();
    }

    @Override
    public String unexplained(Verdict.Unexplained verdict) {
        return "wrong";
    }

    @Override
    public String notAnswered(Verdict.NotAnswered verdict) {
        return "not answered";
    }

    @Override
    public String notRead(Verdict.NotRead verdict) {
        return "not marked: a person must read it";
    }
}
