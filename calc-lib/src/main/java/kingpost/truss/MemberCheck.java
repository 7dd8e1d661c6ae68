package kingpost.truss;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kingpost.truss.TrussDraft.MemberEntry;

/** Turns the members as written into members, and finds what is wrong with their names and ends. */
final class MemberCheck {

    private final MemberNames names;
    private final Problems problems;
    private final List<Member> members = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();
    private final Map<Set<String>, String> seen = new HashMap<>();

    MemberCheck(Set<String> joints, Problems problems) {
        this.names = new MemberNames(joints, problems);
        this.problems = problems;
    }

    List<Member> check(List<MemberEntry> entries) {
        entries.forEach(this::add);
        return members;
    }

    private void add(MemberEntry entry) {
        boolean byEnds = entry.word().isEmpty();
        if (byEnds && entry.from().isEmpty() && entry.to().isEmpty()) {
            problems.add("Members", "an empty list of members is given", "name them, as in \"AB BC\"");
            return;
        }
        String name = byEnds ? join(entry.from(), entry.to()) : entry.word();
        Optional<Map.Entry<String, String>> ends = byEnds ? names.ends(name, entry.from(), entry.to())
                : names.ends(name);
        ends.ifPresentOrElse(e -> add(name, e.getKey(), e.getValue()), () -> unread.add(name));
    }

    /** Names that could not be read as two joints. */
    List<String> unread() {
        return unread;
    }

    private void add(String name, String from, String to) {
        if (from.equals(to)) {
            problems.add("Member " + name, "both ends are joint " + from, "give two different joints");
            return;
        }
        String before = seen.putIfAbsent(Set.of(from, to), name);
        if (before == null) {
            members.add(new Member(name, from, to));
        } else {
            problems.add("Member " + name, "it is given twice" + (before.equals(name) ? "" : ", first as " + before),
                    "leave one out");
        }
    }

    private static String join(String from, String to) {
        return from.length() == 1 && to.length() == 1 ? from + to : from + "-" + to;
    }
}
