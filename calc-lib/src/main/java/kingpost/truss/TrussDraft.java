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
    final List<SpreadEntry> spreads = new ArrayList<>();
    final List<CaseEntry> cases = new ArrayList<>();
    final List<CombinationEntry> combinations = new ArrayList<>();
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

    /** {@code z} is null for a joint of a planar truss, given by x and y. */
    record JointEntry(String name, Amount x, Amount y, Amount z) {
    }

    /** Either one word for both ends ({@code to} empty) or the two ends. */
    record MemberEntry(String word, String from, String to) {
    }

    /**
     * {@code normal} is null for a pin or a ball, and where what was given is no direction: {@code given} then says
     * what it was.
     */
    record SupportEntry(String joint, Support.Kind kind, Direction normal, String given) {
    }

    /**
     * A load over members or along a chord.
     *
     * @param where     names of members or joints; null for all members
     * @param intensity per length, or per area where there is a spacing
     * @param spacing   of the trusses; null where the load is given per length
     */
    record SpreadEntry(Kind kind, String where, Amount intensity, Amount spacing, Measured measured) {

        enum Kind {
            SELF_WEIGHT("self weight"), DECK("deck load"), ROOF("roof load"), WIND("wind load");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            String words() {
                return words;
            }
        }
    }

    /** A load case begins; how many loads stand before it. */
    record CaseEntry(String name, int loadsBefore, int spreadsBefore) {
    }

    record CombinationEntry(String name, String formula) {
    }

    /** Size and direction, or components (then {@code direction} is null). */
    record LoadEntry(String joint, Amount size, Direction direction, List<Amount> components) {
    }
}
