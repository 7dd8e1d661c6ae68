package kingpost.notebook;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.truss.Joint;
import kingpost.truss.LoadCases;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/** The names of a truss: found, proposed, or refused with the names there are. */
final class TrussNames {

    private TrussNames() {
    }

    static List<String> of(TrussModel model, String method) {
        return switch (method) {
            case "force", "member", "section", "substitute", "influence" -> model.members().stream().map(Member::name).toList();
            case "joint", "polygon", "influenceOfShear" -> joints(model).toList();
            case "reaction", "influenceOfReaction" -> supported(model).toList();
            case "loadCase" -> model.cases().cases().stream().map(LoadCases.LoadCase::name).toList();
            case "combination" -> model.cases().combinations().stream().map(LoadCases.Combination::name).toList();
            default -> List.of();
        };
    }

    static Member member(TrussModel model, String name) {
        requireName("Member", name, "write one of " + model.members().stream().map(Member::name)
                .collect(Collectors.joining(", ")));
        return model.member(name).orElseThrow(() -> new CalculationException("Member " + name + ": the truss \""
                + model.name() + "\" has none of that name; its members are "
                + model.members().stream().map(Member::name).collect(Collectors.joining(", ")) + "."));
    }

    /** A member that need not be there, by the two joints that its name says. */
    static Member between(TrussModel model, String name) {
        List<String> joints = joints(model).toList();
        for (String from : joints) {
            for (String to : joints) {
                if ((from + to).equals(name) || (from + "-" + to).equals(name)) {
                    return new Member(name, from, to);
                }
            }
        }
        throw new CalculationException("Member " + name + ": its name is not made of two joints of \"" + model.name()
                + "\"; its joints are " + String.join(", ", joints) + ".");
    }

    static LoadCases.LoadCase loadCase(TrussModel model, String name) {
        return model.cases().named(name).orElseThrow(() -> new CalculationException("Load case " + name + ": the truss \""
                + model.name() + "\" has none of that name; " + (model.cases().isEmpty() ? "its loads are not parted into"
                + " cases." : "its cases are " + model.cases().cases().stream().map(LoadCases.LoadCase::name)
                .collect(Collectors.joining(", ")) + ".")));
    }

    static LoadCases.Combination combination(TrussModel model, String formula) {
        return model.cases().combinations().stream().filter(c -> c.name().equals(formula)).findFirst()
                .orElseGet(() -> model.cases().combination(formula));
    }

    static String joint(TrussModel model, String name) {
        requireName("Joint", name, "write one of " + joints(model).collect(Collectors.joining(", ")));
        return model.joint(name).map(Joint::name).orElseThrow(() -> new CalculationException("Joint " + name
                + ": the truss \"" + model.name() + "\" has none of that name; its joints are "
                + joints(model).collect(Collectors.joining(", ")) + "."));
    }

    static String support(TrussModel model, String name) {
        String joint = joint(model, name);
        if (model.supportsAt(joint).isEmpty()) {
            throw new CalculationException("Joint " + joint + ": nothing supports it, so it has no reaction; supported"
                    + " joints are " + supported(model).collect(Collectors.joining(", ")) + ".");
        }
        return joint;
    }

    private static void requireName(String what, String name, String remedy) {
        if (name == null || name.isBlank()) {
            throw new CalculationException(what + ": no name is given; " + remedy + ".");
        }
    }

    private static Stream<String> joints(TrussModel model) {
        return model.joints().stream().map(Joint::name);
    }

    private static Stream<String> supported(TrussModel model) {
        return model.supports().stream().map(Support::joint).distinct();
    }
}
