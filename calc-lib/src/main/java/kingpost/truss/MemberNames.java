package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the two ends that a member's name says: "AB", "13", "L0-L1". */
final class MemberNames {

    private final Set<String> joints;
    private final Problems problems;

    MemberNames(Set<String> joints, Problems problems) {
        this.joints = joints;
        this.problems = problems;
    }

    /** The ends, or empty and a problem. */
    Optional<Map.Entry<String, String>> ends(String word) {
        List<Map.Entry<String, String>> ways = ways(word);
        if (ways.size() == 1) {
            return Optional.of(ways.get(0));
        }
        if (ways.isEmpty()) {
            explainUnknown(word);
        } else {
            problems.add("Member " + word, "its name can be read in " + ways.size() + " ways, such as "
                    + dashed(ways.get(0)) + " or " + dashed(ways.get(1)), "put a '-' between the two joints");
        }
        return Optional.empty();
    }

    /** Both ends as named, or empty and a problem for each that does not exist. */
    Optional<Map.Entry<String, String>> ends(String member, String from, String to) {
        boolean known = isKnown(member, from) & isKnown(member, to);
        return known ? Optional.of(Map.entry(from, to)) : Optional.empty();
    }

    private List<Map.Entry<String, String>> ways(String word) {
        List<Map.Entry<String, String>> ways = new ArrayList<>();
        int dash = word.indexOf('-');
        if (dash >= 0) {
            addIfKnown(ways, word.substring(0, dash), word.substring(dash + 1));
        } else {
            for (int i = 1; i < word.length(); i++) {
                addIfKnown(ways, word.substring(0, i), word.substring(i));
            }
        }
        return ways;
    }

    private void addIfKnown(List<Map.Entry<String, String>> ways, String from, String to) {
        if (joints.contains(from) && joints.contains(to)) {
            ways.add(Map.entry(from, to));
        }
    }

    private void explainUnknown(String word) {
        int dash = word.indexOf('-');
        if (dash >= 0) {
            ends(word, word.substring(0, dash), word.substring(dash + 1));
            return;
        }
        if (word.codePointCount(0, word.length()) == 1) {
            problems.add("Member " + word, "it names one joint only", "name both ends, as in AB or L0-L1");
            return;
        }
        int cut = splitNearestToKnown(word);
        ends(word, word.substring(0, cut), word.substring(cut));
    }

    /** Where to cut a name so that one half at least is a joint; else after its first character. */
    private int splitNearestToKnown(String word) {
        for (int i = word.length() - 1; i > 0; i--) {
            if (joints.contains(word.substring(0, i)) || joints.contains(word.substring(i))) {
                return i;
            }
        }
        return word.offsetByCodePoints(0, 1);
    }

    private boolean isKnown(String member, String joint) {
        if (joints.contains(joint)) {
            return true;
        }
        problems.add("Member " + member, joint.isBlank() ? "one of its ends has no name" : "there is no joint " + joint,
                joint.isBlank() ? "name both ends, as in AB or L0-L1"
                        : "add joint(\"" + joint + "\", x, y) or correct the name");
        return false;
    }

    private static String dashed(Map.Entry<String, String> ends) {
        return ends.getKey() + "-" + ends.getValue();
    }
}
