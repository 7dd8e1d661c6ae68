package kingpost.notebook;

import java.util.LinkedHashMap;
import java.util.Map;
import kingpost.statics.Solution;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/** A solution's numbers for machines: unrounded, in the truss's unit of force, tension positive. */
final class ResultNumbers {

    private ResultNumbers() {
    }

    static Map<String, Object> of(Solution solution) {
        Map<String, Object> members = new LinkedHashMap<>();
        solution.members().forEach(r -> members.put(r.member().name(), force(solution, r.force())));
        Map<String, Object> reactions = new LinkedHashMap<>();
        solution.reactions().forEach(r -> reactions.put(r.reaction().symbol(), force(solution, r.force())));
        Map<String, Object> numbers = new LinkedHashMap<>();
        numbers.put("truss", solution.truss().name());
        numbers.put("unit", UnitLabel.of(solution.truss().forceUnit()));
        numbers.put("members", members);
        numbers.put("reactions", reactions);
        numbers.put("worstResidual", solution.checks().worst());
        return numbers;
    }

    private static double force(Solution solution, double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).in(solution.truss().forceUnit());
    }
}
