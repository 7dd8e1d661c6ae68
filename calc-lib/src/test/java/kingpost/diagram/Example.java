package kingpost.diagram;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;

import java.util.ArrayList;
import java.util.List;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;

/** Trusses to draw, written in metres and kilonewtons. */
final class Example {

    private final String name;
    private final List<Joint> joints = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();

    private Example(String name) {
        this.name = name;
    }

    static Example named(String name) {
        return new Example(name);
    }

    Example joint(String joint, double x, double y) {
        joints.add(new Joint(joint, Quantity.of(x, m), Quantity.of(y, m), Quantity.of(0, m)));
        return this;
    }

    /** Pairs of joints: "AB" for one-letter names, "L0-L1" for longer ones. */
    Example members(String pairs) {
        for (String pair : pairs.trim().split("\\s+")) {
            int dash = pair.indexOf('-');
            members.add(dash < 0 ? new Member(pair, pair.substring(0, 1), pair.substring(1))
                    : new Member(pair, pair.substring(0, dash), pair.substring(dash + 1)));
        }
        return this;
    }

    Example pin(String joint) {
        supports.add(new Support(joint, Support.Kind.PIN, List.of(Direction.RIGHT, Direction.UP)));
        return this;
    }

    Example roller(String joint) {
        supports.add(new Support(joint, Support.Kind.ROLLER, List.of(Direction.UP)));
        return this;
    }

    Example roller(String joint, double degrees) {
        supports.add(new Support(joint, Support.Kind.ROLLER, List.of(at(degrees))));
        return this;
    }

    Example link(String joint, double degrees) {
        supports.add(new Support(joint, Support.Kind.LINK, List.of(at(degrees))));
        return this;
    }

    Example load(String joint, double size, Direction direction) {
        loads.add(new Load.Directed(joint, Quantity.of(size, kN), direction));
        return this;
    }

    static Direction at(double degrees) {
        return new Direction(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)), 0,
                "at " + degrees + "\u00b0", false);
    }

    TrussModel build() {
        return new TrussModel(name, m, kN, joints, members, supports, loads);
    }

    /** A dock canopy: three joints in a row, one above the middle. */
    static TrussModel canopy() {
        return named("Dock canopy").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
                .members("AB BC AD BD CD").pin("A").roller("C").load("D", 12, Direction.DOWN).build();
    }

    /** Parallel chords with verticals and diagonals falling towards the middle, a load at each lower joint. */
    static TrussModel bridge(int panels, double panel, double height, double load) {
        Example example = named("Bridge of " + panels + " panels");
        StringBuilder pairs = new StringBuilder();
        for (int i = 0; i <= panels; i++) {
            example.joint("L" + i, i * panel, 0);
            if (i > 0) {
                pairs.append("L").append(i - 1).append("-L").append(i).append(' ');
            }
        }
        for (int i = 1; i < panels; i++) {
            example.joint("U" + i, i * panel, height);
            pairs.append("L").append(i).append("-U").append(i).append(' ');
            if (i > 1) {
                pairs.append("U").append(i - 1).append("-U").append(i).append(' ');
                pairs.append(i <= panels / 2 ? "U" + (i - 1) + "-L" + i : "L" + (i - 1) + "-U" + i).append(' ');
            }
            example.load("L" + i, load, Direction.DOWN);
        }
        pairs.append("L0-U1 L").append(panels).append("-U").append(panels - 1);
        return example.members(pairs.toString()).pin("L0").roller("L" + panels).build();
    }

    /** Triangles in a row without verticals, loads on the upper joints. */
    static TrussModel triangles(int panels, double panel, double height, double load) {
        Example example = named("Triangles, " + panels + " panels");
        StringBuilder pairs = new StringBuilder();
        for (int i = 0; i <= panels; i++) {
            example.joint("L" + i, i * panel, 0);
            if (i < panels) {
                example.joint("U" + i, (i + 0.5) * panel, height).load("U" + i, load, Direction.DOWN);
                pairs.append("L" + i + "-L" + (i + 1) + " L" + i + "-U" + i + " U" + i + "-L" + (i + 1) + " ");
                pairs.append(i > 0 ? "U" + (i - 1) + "-U" + i + " " : "");
            }
        }
        return example.members(pairs.toString()).pin("L0").roller("L" + panels).build();
    }

    /** A roof with posts, wind square to the left slope and snow on every upper joint. */
    static TrussModel roof(int panels, double panel, double rise) {
        Example example = named("Roof of " + panels + " panels");
        StringBuilder pairs = new StringBuilder();
        int half = panels / 2;
        double slope = Math.toDegrees(Math.atan2(rise, half * panel));
        for (int i = 0; i <= panels; i++) {
            example.joint("L" + i, i * panel, 0);
            pairs.append(i > 0 ? "L" + (i - 1) + "-L" + i + " " : "");
        }
        for (int i = 1; i < panels; i++) {
            example.joint("U" + i, i * panel, rise * (1 - Math.abs(i - half) / (double) half));
            pairs.append("L" + i + "-U" + i + " ").append(i > 1 ? "U" + (i - 1) + "-U" + i + " " : "");
            pairs.append(i < half ? "U" + i + "-L" + (i + 1) + " " : i > half ? "U" + i + "-L" + (i - 1) + " " : "");
            example.load("U" + i, 4.5, Direction.DOWN);
            if (i < half) {
                example.load("U" + i, 3.25, at(slope - 90));
            }
        }
        pairs.append("L0-U1 L").append(panels).append("-U").append(panels - 1);
        return example.members(pairs.toString()).pin("L0").roller("L" + panels).build();
    }

    /** A bracket on a wall with an inclined roller, loads along members, two loads at one joint. */
    static TrussModel bracket() {
        return named("Wall bracket").joint("A", 0, 2).joint("B", 0, 0).joint("C", 2, 2).joint("D", 2, 0.5)
                .joint("E", 4.5, 2).members("AC BD AD CD CE DE AB").pin("A").roller("B", 30)
                .load("E", 8, Direction.DOWN).load("E", 3.5, Direction.RIGHT).load("C", 5, Direction.LEFT)
                .load("C", 6, Direction.DOWN).load("C", 2.75, Direction.DOWN).load("D", 4, at(-60)).build();
    }

    /** A mast held by three links. */
    static TrussModel mast(int storeys) {
        Example example = named("Mast").joint("A0", 0, 0).joint("B0", 1.2, 0);
        StringBuilder pairs = new StringBuilder("A0-B0 ");
        for (int i = 1; i <= storeys; i++) {
            example.joint("A" + i, 0, 1.5 * i).joint("B" + i, 1.2, 1.5 * i).load("A" + i, 2.5, Direction.RIGHT);
            pairs.append("A" + (i - 1) + "-A" + i + " B" + (i - 1) + "-B" + i + " A" + i + "-B" + i + " A" + (i - 1)
                    + "-B" + i + " ");
        }
        return example.members(pairs.toString()).link("A0", 90).link("A0", 0).link("B0", 90).build();
    }

    /** Every example, small to large. */
    static List<TrussModel> all() {
        List<TrussModel> all = new ArrayList<>(List.of(canopy(), bracket(), mast(3), mast(10)));
        for (int panels = 4; panels <= 12; panels += 2) {
            all.add(bridge(panels, 4, 5, 12.5));
            all.add(roof(panels, 2.5, 4));
        }
        for (int panels = 3; panels <= 12; panels++) {
            all.add(triangles(panels, 3, 2.6, 10));
        }
        return all;
    }
}
