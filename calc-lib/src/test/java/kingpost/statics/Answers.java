package kingpost.statics;

import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** Reads answers out of a solution by name, in the truss's unit of force. */
final class Answers {

    private Answers() {
    }

    static Solution.MemberResult member(Solution solution, String name) {
        String resolved = solution.truss().member(name).orElseThrow().name();
        return solution.members().stream().filter(r -> r.member().name().equals(resolved)).findFirst().orElseThrow();
    }

    static double force(Solution solution, String name) {
        return inUnit(solution, member(solution, name).force());
    }

    static double reaction(Solution solution, String name) {
        return inUnit(solution, solution.reactions().stream().filter(r -> r.reaction().name().equals(name)).findFirst()
                .orElseThrow().force());
    }

    private static double inUnit(Solution solution, double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).in(solution.truss().forceUnit());
    }
}
