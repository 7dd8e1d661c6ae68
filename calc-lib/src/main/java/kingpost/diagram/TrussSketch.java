package kingpost.diagram;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kingpost.statics.Solution.ReactionResult;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** The parts of a truss that every figure of it draws, one method for each. */
final class TrussSketch {

    private static final double ARROW = 36;
    private static final int LONGEST_NAME = 14;
    private static final int MOST_UNWRITTEN = 40;

    private final Sheet sheet;
    private final TrussLayout layout;
    private final Lettering lettering;
    private final ArrowPlacer arrows;

    TrussSketch(Sheet sheet, TrussLayout layout, Lettering lettering) {
        this.sheet = sheet;
        this.layout = layout;
        this.lettering = lettering;
        this.arrows = new ArrowPlacer(sheet, Hull.of(truss().joints().stream().map(j -> layout.of(j.name())).toList()));
    }

    TrussModel truss() {
        return layout.truss();
    }

    Sheet sheet() {
        return sheet;
    }

    TrussLayout layout() {
        return layout;
    }

    Lettering lettering() {
        return lettering;
    }

    /** All members alike; in a dense truss each stroke of a pixel's width once. */
    void members(String colour, double width) {
        if (!layout.isDense()) {
            truss().members().forEach(m -> sheet.line(Layer.MEMBERS, layout.from(m), layout.to(m), colour, width));
            return;
        }
        Set<List<Place>> drawn = new HashSet<>();
        for (Member member : truss().members()) {
            List<Place> line = List.of(layout.from(member).rounded(), layout.to(member).rounded());
            if (drawn.add(line)) {
                sheet.line(Layer.MEMBERS, line.get(0), line.get(1), colour, 1);
            }
        }
    }

    void joints() {
        if (layout.isDense()) {
            return;
        }
        double radius = 3.2;
        for (Joint joint : truss().joints()) {
            Place place = layout.of(joint.name());
            sheet.add(Layer.JOINTS, new Element.Circle(place.point(), radius,
                    Style.stroke(Ink.BLACK, 1.4).filled(Ink.PAPER)), Patch.disc(place, radius + 0.7));
        }
    }

    void supports() {
        SupportSymbol symbol = new SupportSymbol(sheet, layout);
        truss().supports().forEach(symbol::draw);
    }

    /** Load arrows, each with its value; none in a dense truss. */
    void loads() {
        if (layout.isDense()) {
            return;
        }
        ForceText text = new ForceText(truss());
        for (Load load : truss().loads()) {
            for (LoadArrow arrow : LoadArrow.of(load, layout.view())) {
                String value = text.given(arrow.size());
                arrow(layout.of(load.joint()), arrow.way(), Ink.BLACK,
                        lettering.caption(lettering.isBare() ? text.bare(value) : value, Ink.BLACK),
                        "load at " + load.joint());
            }
        }
    }

    /** A reaction in its true sense, with its value; nothing where it is zero. */
    void reaction(ReactionResult result) {
        Place way = way(result);
        if (layout.isDense() || result.force() == 0 || way.norm() == 0) {
            return;
        }
        ForceText text = new ForceText(truss());
        String value = text.ofNewtons(result.force());
        arrow(layout.of(result.reaction().joint()), way, Ink.REACTION,
                lettering.caption(lettering.isBare() ? text.bare(value) : value, Ink.REACTION),
                "reaction at " + result.reaction().joint());
    }

    /** The way a reaction acts on the truss, its sign taken in. */
    private Place way(ReactionResult result) {
        return layout.wayOf(result.reaction().direction()).times(result.force() < 0 ? -1 : 1);
    }

    /** An arrow that acts at a joint, and its label. */
    void arrow(Place joint, Place way, String colour, Caption caption, String key) {
        ArrowPlacer.Line line = arrows.place(joint, way, ARROW);
        sheet.arrow(line.tail(), line.tip(), colour, 2);
        sheet.label(new Label(caption, Spots.atArrow(line.near(), line.far(), caption), key, 0));
    }

    /** A member drawn for what it does; thinner in a dense truss. */
    void member(Member member, MemberStyle style) {
        if (layout.isDense()) {
            sheet.line(Layer.MEMBERS, layout.from(member), layout.to(member), style.colour(), style.width() / 2.5);
        } else {
            style.draw(sheet, layout.from(member), layout.to(member));
        }
    }

    /** A member's force written beside it: value and letter; nothing in a dense truss. */
    void force(Member member, MemberStyle style, double newtons) {
        force(member, style, newtons, style.width());
    }

    /** The same beside a line that takes {@code width} px. */
    void force(Member member, MemberStyle style, double newtons, double width) {
        if (layout.isDense()) {
            return;
        }
        ForceText text = new ForceText(truss());
        String value = text.ofNewtons(newtons);
        String size = lettering.isBare() ? text.bare(value) : value;
        String said = style == MemberStyle.ZERO ? style.letter()
                : lettering.isTerse() ? size : size + " " + style.letter();
        Caption caption = lettering.caption(said, style.colour());
        sheet.label(new Label(caption, Spots.along(layout.from(member), layout.to(member), caption,
                width / 2 + 3.5, lettering.isBare()), member.name(), 1));
    }

    void legend(List<MemberStyle> styles) {
        new Legend(sheet).draw(styles, Math.max(sheet.bounds().width(), 300));
    }

    /** Names of joints; in a dense truss only of those that are held. */
    void names() {
        for (Joint joint : truss().joints()) {
            if (layout.isDense() && truss().supportsAt(joint.name()).isEmpty()) {
                continue;
            }
            Caption caption = lettering.caption(shortened(joint.name()), Ink.BLACK).inBold();
            sheet.label(new Label(caption, Spots.around(layout.of(joint.name()), caption,
                    layout.outward(joint.name())), joint.name(), 0));
        }
    }

    /** Joint names that are members' ends, cut short where they are long. */
    static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "\u2026";
    }

    /** The axes, where a view turns them; under the figure: the unit that bare numbers are in, and what found no room beside its line. */
    void notes() {
        if (layout.view() == View.PICTORIAL) {
            new AxesMark(sheet).draw(View.PICTORIAL);
        }
        List<String> notes = new ArrayList<>();
        if (lettering.isBare() && !layout.isDense()) {
            notes.add("Forces in " + new ForceText(truss()).unit() + ".");
        }
        notes.addAll(unwritten());
        if (layout.isDense()) {
            notes.add(truss().joints().size() + " joints, " + truss().members().size() + " members, "
                    + truss().loads().size() + " loads: too close together here for names and load arrows.");
        }
        double y = sheet.bounds().bottom() + 20;
        for (String note : notes) {
            Caption caption = Caption.of(note, 11, Ink.MEMBER);
            sheet.writeFrom(caption, new Place(sheet.bounds().left(), y));
            y += 16;
        }
    }

    /** Labels that found no room, as many to a line as fit. */
    private List<String> unwritten() {
        List<Label> left = sheet.homeless();
        if (left.size() > MOST_UNWRITTEN) {
            return List.of(left.size() + " labels have no room at this size.");
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(left.isEmpty() ? "" : "No room above for ");
        for (Label label : left) {
            if (line.length() + label.whole().length() > sheet.bounds().width() / 6.4) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(label.whole()).append(label == left.get(left.size() - 1) ? "." : ", ");
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }
}
