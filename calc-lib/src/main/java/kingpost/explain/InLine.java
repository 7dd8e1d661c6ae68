package kingpost.explain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.HashMap;
import java.util.Set;

import kingpost.statics.Inspection;
import kingpost.statics.Inspection.Finding;
import kingpost.truss.Member;

/** Members that hand one force on to each other in a line, as inspection found them. */
final class InLine {

    private final Map<String, Set<String>> lines = new HashMap<>();

    InLine(Inspection inspection) {
        inspection.findings().forEach(finding -> finding.accept(new Joining()));
    }

    /** The other members that carry the same force as {@code member}, by name. */
    List<String> with(Member member) {
        return lines.getOrDefault(member.name(), Set.of()).stream().filter(name -> !name.equals(member.name())).toList();
    }

    private void join(Member first, Member second) {
        Set<String> line = new LinkedHashSet<>();
        line.addAll(lines.getOrDefault(first.name(), Set.of(first.name())));
        line.addAll(lines.getOrDefault(second.name(), Set.of(second.name())));
        line.forEach(name -> lines.put(name, line));
    }

    private final class Joining implements Finding.Visitor<Void> {
        @Override
        public Void twoMembers(Finding.TwoMembers finding) {
            return null;
        }

        @Override
        public Void singleMember(Finding.SingleMember finding) {
            return null;
        }

        @Override
        public Void threeMembers(Finding.ThreeMembers finding) {
            join(finding.first(), finding.second());
            return null;
        }

        @Override
        public Void loadInLine(Finding.LoadInLine finding) {
            return null;
        }

        @Override
        public Void sameForce(Finding.SameForce finding) {
            join(finding.first(), finding.second());
            return null;
        }

        @Override
        public Void notInOnePlane(Finding.NotInOnePlane finding) {
            return null;
        }

        @Override
        public Void outOfPlane(Finding.OutOfPlane finding) {
            return null;
        }
    }
}
