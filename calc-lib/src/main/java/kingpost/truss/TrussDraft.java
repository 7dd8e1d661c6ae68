package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;

/** What the user wrote down, word for word and unchecked. */
final class TrussDraft {

    String name;
    final List<UnitPair> units = new ArrayList<>();
    final List<JointEntry> joints = new ArrayList<>();
    final List<MemberEntry> members = new ArrayList<>();
    final List<SupportEntry> supports = new ArrayList<>();
    final List<LoadEntry> loads = new ArrayList<>();
    /** What holds the truss where the user writes no support. */
    final List<SupportEntry> usualSupports = new ArrayList<>();

    TrussDraft(String name) {
        this.name = name;
    }

    List<SupportEntry> effectiveSupports() {
        return supports.isEmpty() ? usualSupports : supports;
    }

    record UnitPair(Unit<?> length, Unit<?> force) {
    }

    record JointEntry(String name, Amount x, Amount y, Amount z) {
    }

    /** Either one word for both ends ({@code to} empty) or the two ends. */
    record MemberEntry(String word, String from, String to) {
    }

    /** {@code normal} is null for a pin, and where an angle was given that is not a number. */
    record SupportEntry(String joint, Support.Kind kind, Direction normal, double degrees) {
    }

    /** Size and direction, or components (then {@code direction} is null). */
    record LoadEntry(String joint, Amount size, Direction direction, List<Amount> components) {
    }
}
