package kingpost.calculation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kingpost.calculation.Line.Checked;
import kingpost.calculation.Line.Computed;
import kingpost.calculation.Line.Given;
import kingpost.calculation.Line.Tabulated;

/** Which lines give a name anew, and which still stand on a value that has been replaced. */
final class LineHistory {

    private final List<Line> lines;
    private final Map<String, Line> current = new HashMap<>();
    private final Map<Integer, Line> earlier = new HashMap<>();
    private final Set<Integer> outdated = new HashSet<>();

    LineHistory(List<Line> lines) {
        this.lines = List.copyOf(lines);
        for (Line line : lines) {
            nameOf(line).ifPresent(name -> {
                Line before = current.put(name, line);
                if (before != null) {
                    earlier.put(line.number(), before);
                }
            });
        }
        for (Line line : lines) {
            if (!outdatedNames(line).isEmpty()) {
                outdated.add(line.number());
            }
        }
    }

    /** The line that gave the same name before, if one did. */
    Optional<Line> before(Line line) {
        return Optional.ofNullable(earlier.get(line.number()));
    }

    /** The line that gives the same name now, if it is another one. */
    Optional<Line> now(Line line) {
        return nameOf(line).map(current::get).filter(other -> other.number() != line.number());
    }

    /** The names in the line that have another value by now, or stand on one that has. */
    Set<String> outdatedNames(Line line) {
        Set<String> names = new LinkedHashSet<>();
        operands(line).forEach((name, operand) -> {
            Line source = lines.get(operand.line() - 1);
            if (current.get(name) != source || outdated.contains(source.number())) {
                names.add(name);
            }
        });
        return names;
    }

    /** The name that the line gives a value, if it does. */
    static Optional<String> nameOf(Line line) {
        return line instanceof Given given ? Optional.of(given.name())
                : line instanceof Computed computed ? Optional.of(computed.name()) : Optional.empty();
    }

    /** True when the lines differ in nothing but their number. */
    static boolean sayTheSame(Line a, Line b) {
        return numbered(a, 0).equals(numbered(b, 0));
    }

    private static Map<String, Operand> operands(Line line) {
        return line.accept(new Line.Visitor<>() {
            @Override
            public Map<String, Operand> given(Given given) {
                return Map.of();
            }

            @Override
            public Map<String, Operand> computed(Computed computed) {
                return computed.operands();
            }

            @Override
            public Map<String, Operand> checked(Checked checked) {
                return checked.operands();
            }

            @Override
            public Map<String, Operand> tabulated(Tabulated tabulated) {
                return tabulated.operands();
            }
        });
    }

    private static Line numbered(Line line, int number) {
        return line.accept(new Line.Visitor<>() {
            @Override
            public Line given(Given g) {
                return new Given(number, g.name(), g.value(), g.inSource(), g.description(), g.reference());
            }

            @Override
            public Line computed(Computed c) {
                return new Computed(number, c.name(), c.text(), c.formula(), c.operands(), c.value(), c.description(),
                        c.reference());
            }

            @Override
            public Line checked(Checked c) {
                return new Checked(number, c.text(), c.left(), c.right(), c.operands(), c.verdict(), c.description(),
                        c.reference());
            }

            @Override
            public Line tabulated(Tabulated t) {
                return new Tabulated(number, t.range(), t.columns(), t.operands(), t.rows(), t.description(),
                        t.reference());
            }
        });
    }
}
