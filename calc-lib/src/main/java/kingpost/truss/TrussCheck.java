package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes the model from what was written down, or reports everything that is wrong with it. */
final class TrussCheck {

    private final TrussDraft draft;
    private final Problems problems = new Problems();

    TrussCheck(TrussDraft draft) {
        this.draft = draft;
    }

    TrussModel model() {
        String subject = "Truss" + (isNamed() ? " " + draft.name : "");
        if (!isNamed()) {
            problems.add("Truss", "it has no name", "write Truss.named(\"Canopy\") or the like");
        }
        if (draft.joints.isEmpty() && draft.members.isEmpty()) {
            problems.add(subject, "it is empty", "add joints, members and supports");
        }
        UnitChoice units = UnitChoice.of(draft, problems);
        JointCheck jointCheck = new JointCheck(units, problems);
        Map<String, Joint> joints = jointCheck.check(draft.joints);
        List<Member> members = members(joints, jointCheck.faulty(), subject);
        if (draft.effectiveSupports().isEmpty() && !draft.joints.isEmpty()) {
            problems.add(subject, "it has no support", "add pin(\"A\") and roller(\"C\"), or links");
        }
        List<Support> supports = new SupportCheck(joints, problems).check(draft.effectiveSupports());
        LoadCaseCheck loads = new LoadCaseCheck(draft, problems, (single, spread) -> loads(joints, members, units, single,
                spread));
        LoadCases cases = loads.cases();
        problems.throwIfAny();
        return new TrussModel(draft.name, units.length(), units.force(), List.copyOf(joints.values()), members,
                supports, loads.all(), cases);
    }

    private List<Load> loads(Map<String, Joint> joints, List<Member> members, UnitChoice units,
                             List<TrussDraft.LoadEntry> single, List<TrussDraft.SpreadEntry> spread) {
        List<Load> loads = new ArrayList<>(new LoadCheck(joints, units, problems).check(single));
        loads.addAll(new SpreadCheck(joints, members, units, problems).check(spread));
        return loads;
    }

    private List<Member> members(Map<String, Joint> joints, Set<String> faulty, String subject) {
        MemberCheck check = new MemberCheck(joints.keySet(), problems);
        List<Member> members = check.check(draft.members);
        if (draft.members.isEmpty() && !draft.joints.isEmpty()) {
            problems.add(subject, "it has no members", "add them by their ends, as in members(\"AB BC\")");
        }
        GeometryCheck geometry = new GeometryCheck(joints, faulty, problems);
        geometry.check(members);
        if (!draft.members.isEmpty()) {
            geometry.checkJoined(members, check.unread());
        }
        return members;
    }

    private boolean isNamed() {
        return draft.name != null && !draft.name.isBlank();
    }
}
