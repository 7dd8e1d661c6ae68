package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import kingpost.statics.Step.BodyForce;
import kingpost.statics.Step.JointCount;
import kingpost.statics.Step.Keep;
import kingpost.truss.Member;

/** Works one part of a cut truss: its free body and the equations as planned. */
final class SectionWork {

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final BitSet part;
    private final int turn;

    /**
     * @param turn before which an unknown must have been solved to count as known
     */
    SectionWork(Network network, Progress progress, Values values, BitSet part, int turn) {
        this.network = network;
        this.progress = progress;
        this.values = values;
        this.part = part;
        this.turn = turn;
    }

    /** Finds the unknowns, writes them into the values, and tells how. */
    Step.AtSection work(List<BodyPlan.Planned> plan, List<JointCount> stuck) {
        Body body = Body.part(network, part);
        BodyWork work = new BodyWork(body, values).solve(plan);
        plan.forEach(p -> shareInLine(p.unknown().unknown()));
        work.check();
        return new Step.AtSection(stuck, cut(), omitted(), joints(), keep(body), forces(body),
                work.equations().stream().map(this::withoutIdle).toList(), work.answers());
    }

    /** The free body with an equation that was worked elsewhere. */
    Step.AtSection told(BodyEquation equation) {
        Body body = Body.part(network, part);
        return new Step.AtSection(List.of(), cut(), omitted(), joints(), keep(body), forces(body),
                List.of(withoutIdle(equation)), List.of());
    }

    private void shareInLine(int unknown) {
        progress.sameAs(unknown).stream().filter(u -> u != unknown).forEach(u -> values.same(u, unknown));
    }

    /** The equation without members that carry nothing and are not drawn. */
    private BodyEquation withoutIdle(BodyEquation equation) {
        List<Member> idle = omitted();
        return new BodyEquation(equation.kind(), equation.terms().stream().filter(term -> !(term.source()
                instanceof Source.OfMember of && idle.contains(of.member()))).toList(), equation.role(),
                equation.residual());
    }

    private List<Member> cut() {
        List<Integer> cut = Cut.of(network, part).stream().filter(m -> !progress.isOmitted(m)).toList();
        List<Integer> ordered = new ArrayList<>(cut.stream().filter(m -> !progress.isKnownBefore(m, turn)).toList());
        cut.stream().filter(m -> progress.isKnownBefore(m, turn)).forEach(ordered::add);
        return ordered.stream().map(network::member).toList();
    }

    private List<Member> omitted() {
        return Cut.of(network, part).stream().filter(progress::isOmitted).map(network::member).toList();
    }

    private List<String> joints() {
        return part.stream().mapToObj(network::name).toList();
    }

    private Keep keep(Body body) {
        Body other = Body.part(network, Cut.other(network, part));
        boolean held = body.unknowns().stream().anyMatch(f -> !network.isMember(f.unknown()));
        boolean otherHeld = other.unknowns().stream().anyMatch(f -> !network.isMember(f.unknown()));
        if (!held && otherHeld) {
            return Keep.NO_REACTIONS;
        }
        return body.forces().size() < other.forces().size() ? Keep.FEWER_FORCES : Keep.EITHER;
    }

    private List<BodyForce> forces(Body body) {
        List<BodyForce> forces = new ArrayList<>();
        for (Body.Force force : body.forces()) {
            if (force.unknown() < 0) {
                Source.OfLoad load = (Source.OfLoad) force.source();
                forces.add(new BodyForce(force.name(), new JointForce(load, network.along(load), true, force.load())));
            } else if (!progress.isOmitted(force.unknown())) {
                forces.add(new BodyForce(force.name(), new JointForce(force.source(),
                        network.along(force.unknown(), force.joint()), progress.isKnownBefore(force.unknown(), turn),
                        values.get(force.unknown()))));
            }
        }
        return forces;
    }
}
