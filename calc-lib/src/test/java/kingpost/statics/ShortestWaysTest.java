package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kingpost.form.Form;
import kingpost.form.FormTrusses;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No way to a member is longer than it need be. The rule is written anew, without any of the search's own equations:
 * every set of joints that hang together is a body, and a body gives an unknown when that unknown's line of action is
 * no combination of the lines of the others that are still unknown. All sets of unknowns that one, two or three such
 * steps can tell are tried.
 */
class ShortestWaysTest {

    private static final int LONGEST = 3;

    static Stream<TrussModel> trusses() {
        return Stream.concat(Stream.of(FormTrusses.loaded(Form.PRATT, 4), FormTrusses.loaded(Form.HOWE, 5),
                FormTrusses.loaded(Form.WARREN, 4), FormTrusses.loaded(Form.FINK, 4), FormTrusses.loaded(Form.PARKER, 5),
                FormTrusses.loaded(Form.BALTIMORE, 6), FormTrusses.loaded(Form.K, 4), FormTrusses.loaded(Form.QUEEN_POST, 3),
                FormTrusses.loaded(Form.SCISSORS, 4), FormTrusses.loaded(Form.BOWSTRING, 4)),
                Stream.of("MS-04", "MS-07", "MS-09", "MJ-01").map(id -> PublishedCase.of(id).truss()));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("trusses")
    void noneIsLongerThanItNeedBe(TrussModel truss) {
        Bodies bodies = new Bodies(truss);
        Map<Integer, Integer> fewest = bodies.fewest();

        for (Member member : truss.members()) {
            MemberWays ways = MemberSearch.of(truss, member);
            if (!ways.zero()) {
                int equations = ways.ways().get(0).count().orElseThrow().equations();
                int least = fewest.getOrDefault(bodies.group(truss.members().indexOf(member)), LONGEST + 1);
                if (least <= LONGEST) {
                    assertEquals(least, equations, truss.name() + " " + member.name());
                } else {
                    assertTrue(equations > LONGEST, truss.name() + " " + member.name());
                }
            }
        }
    }

    /** Every body of a truss, each with the lines of action of what is unknown on it. */
    private static final class Bodies {

        private final Network network;
        private final Inspections inspections;
        private final List<Map<Integer, double[]>> all = new ArrayList<>();

        Bodies(TrussModel truss) {
            network = new Network(truss);
            inspections = new Inspections(network);
            for (int part = 1; part < 1 << network.joints(); part++) {
                if (hangsTogether(part)) {
                    Map<Integer, double[]> lines = lines(part);
                    if (!lines.isEmpty() && lines.size() <= 7) {
                        all.add(lines);
                    }
                }
            }
        }

        /** Members that are seen to carry the same force count as one. */
        int group(int unknown) {
            return inspections.leader(unknown);
        }

        private boolean hangsTogether(int part) {
            int reached = Integer.lowestOneBit(part);
            for (int before = 0; before != reached;) {
                before = reached;
                for (int m = 0; m < network.members(); m++) {
                    int ends = 1 << network.firstJoint(m) | 1 << network.otherEnd(m, network.firstJoint(m));
                    reached |= (ends & part) == ends && (ends & reached) != 0 ? ends : 0;
                }
            }
            return reached == part;
        }

        private Map<Integer, double[]> lines(int part) {
            Map<Integer, double[]> lines = new HashMap<>();
            for (int j = 0; j < network.joints(); j++) {
                for (int u : network.unknownsAt(j)) {
                    boolean inside = network.isMember(u) && (part >> network.otherEnd(u, j) & 1) == 1;
                    if ((part >> j & 1) == 1 && !inside && !inspections.isZero(u)) {
                        Vector unit = network.unit(u, j);
                        Vector at = network.place(j).times(1 / network.extent());
                        double[] line = lines.computeIfAbsent(group(u), g -> new double[3]);
                        line[0] += unit.x();
                        line[1] += unit.y();
                        line[2] += at.x() * unit.y() - at.y() * unit.x();
                    }
                }
            }
            lines.values().removeIf(line -> Math.abs(line[0]) + Math.abs(line[1]) + Math.abs(line[2]) < 1e-9);
            return lines;
        }

        /** Steps to each unknown, where three or fewer lead to it. */
        Map<Integer, Integer> fewest() {
            Map<Integer, Integer> fewest = new HashMap<>();
            Set<Set<Integer>> level = Set.of(Set.of());
            for (int length = 1; length <= LONGEST; length++) {
                Set<Set<Integer>> next = new HashSet<>();
                for (Set<Integer> known : level) {
                    for (int told : told(known)) {
                        fewest.putIfAbsent(told, length);
                        if (length < LONGEST) {
                            Set<Integer> more = new HashSet<>(known);
                            more.add(told);
                            next.add(more);
                        }
                    }
                }
                level = next;
            }
            return fewest;
        }

        private Set<Integer> told(Set<Integer> known) {
            Set<Integer> told = new HashSet<>();
            for (Map<Integer, double[]> lines : all) {
                List<Integer> open = lines.keySet().stream().filter(u -> !known.contains(u)).toList();
                for (int one : open) {
                    if (!told.contains(one) && isApart(lines.get(one), open.stream().filter(u -> u != one)
                            .map(lines::get).toList())) {
                        told.add(one);
                    }
                }
            }
            return told;
        }

        /** What is left of one line when its parts along the others are taken away. */
        private static boolean isApart(double[] one, List<double[]> others) {
            List<double[]> square = new ArrayList<>();
            for (double[] other : others) {
                double[] rest = rest(other, square);
                double size = Math.sqrt(dot(rest, rest));
                if (size > 1e-8) {
                    square.add(new double[] {rest[0] / size, rest[1] / size, rest[2] / size});
                }
            }
            double[] rest = rest(one, square);
            return dot(rest, rest) > 1e-16;
        }

        private static double[] rest(double[] line, List<double[]> square) {
            double[] rest = line.clone();
            for (double[] axis : square) {
                double part = dot(rest, axis);
                for (int i = 0; i < 3; i++) {
                    rest[i] -= part * axis[i];
                }
            }
            return rest;
        }

        private static double dot(double[] a, double[] b) {
            return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        }
    }
}
