package kingpost.variant;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kingpost.csv.CsvTable;
import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.diagram.TrussFigure;
import kingpost.statics.Solution;
import kingpost.svg.Svg;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/**
 * Variants of one truss together: an overview for whoever hands them out, and all their keys in one table.
 *
 * @param truss    what they are variants of
 * @param seed     that they were made from
 * @param variants in order of their numbers
 */
public record VariantSet(TrussModel truss, long seed, List<Variant> variants) {

    private static final int FIGURES = 6;
    private static final EngineeringFormat GIVEN = EngineeringFormat.given();
    private static final EngineeringFormat THREE = EngineeringFormat.standard().keepingUnits();
    private static final EngineeringFormat SIX = THREE.withFigures(6);

    public VariantSet {
        variants = List.copyOf(variants);
    }

    /** So many variants, as {@link Variants#of} makes them. */
    public static VariantSet of(TrussModel truss, int count, long seed) {
        return new VariantSet(truss, seed, Variants.of(truss, count, seed));
    }

    /** What differs from one to the next, and their figures. It tells answers, so it is not for handing out. */
    public Derivation overview() {
        List<Block> blocks = new ArrayList<>();
        Variant first = variants.get(0);
        int zero = (int) first.solution().members().stream().filter(each -> each.sense() == Solution.Sense.ZERO).count();
        blocks.add(Prose.of("Each has " + truss.members().size() + " members, " + first.solution().steps().size()
                + " steps to work and " + (zero == 0 ? "no member that carries" : zero == 1 ? "one member that carries"
                : zero + " members that carry") + " nothing, as the first truss has; no two have the same"
                + " answers. Made from seed " + seed + ", which makes the same set again."));
        blocks.add(table());
        int drawn = Math.min(FIGURES, variants.size());
        List<Block> figures = new ArrayList<>();
        variants.subList(0, drawn).forEach(variant -> figures.add(figure(variant)));
        if (drawn < variants.size()) {
            figures.add(Prose.of("The first " + drawn + " of " + variants.size() + " are drawn here."));
        }
        blocks.add(Section.of("Figures", figures));
        return new Derivation(truss.name() + ": " + variants.size() + (variants.size() == 1 ? " variant" : " variants"),
                blocks);
    }

    /** The figure of a variant. */
    public static Figure figure(Variant variant) {
        Svg svg = TrussFigure.of(variant.truss());
        return new Figure(svg, Phrase.of(variant.truss().name()), svg.description());
    }

    private Table table() {
        String length = UnitLabel.of(truss.lengthUnit());
        String force = UnitLabel.of(truss.forceUnit());
        List<List<Phrase>> rows = new ArrayList<>();
        for (Variant variant : variants) {
            rows.add(List.of(Phrase.of(Integer.toString(variant.number())),
                    Phrase.of(extent(variant, Joint::x) + " by " + extent(variant, Joint::y)),
                    Phrase.of(variant.truss().loads().stream().map(VariantSet::said).collect(Collectors.joining("; "))),
                    Phrase.of(largest(variant, 1)), Phrase.of(largest(variant, -1)), Phrase.of(numbers(variant))));
        }
        return new Table(Phrase.EMPTY, List.of(Column.left("Variant"), Column.left("Size (" + length + ")"),
                Column.left("Loads"), Column.left("Largest tension (" + force + ")"),
                Column.left("Largest compression (" + force + ")"), Column.left("Answers")), rows, true);
    }

    private String extent(Variant variant, Function<Joint, Quantity> axis) {
        double[] places = variant.truss().joints().stream()
                .mapToDouble(joint -> axis.apply(joint).in(truss.lengthUnit())).sorted().toArray();
        return GIVEN.number(Math.rint((places[places.length - 1] - places[0]) * 1e9) / 1e9);
    }

    private static String said(Load load) {
        return load instanceof Load.Components parts
                ? "(" + GIVEN.format(parts.fx()) + ", " + GIVEN.format(parts.fy()) + ") at " + load.joint()
                : GIVEN.format(load.magnitude()) + " " + load.direction().words() + " at " + load.joint();
    }

    private String largest(Variant variant, int sign) {
        return variant.solution().members().stream().filter(each -> each.force() * sign > 0)
                .max((a, b) -> Double.compare(Math.abs(a.force()), Math.abs(b.force())))
                .map(each -> THREE.number(Math.abs(inTrussUnit(each.force()))) + " in " + each.member().name())
                .orElse("none");
    }

    private double inTrussUnit(double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).in(truss.forceUnit());
    }

    private static String numbers(Variant variant) {
        boolean whole = variant.solution().members().stream().allMatch(each -> each.exact().isPresent()
                && each.exact().get().isRational() && each.exact().get().coefficient().isWhole());
        return whole ? "whole numbers" : variant.clean() ? "short decimals" : "roots or long decimals";
    }

    /**
     * A row for each variant: its number, the force in each member and each reaction, tension positive, in the truss's
     * unit of force to six significant figures.
     */
    public CsvTable keys() {
        String unit = " (" + UnitLabel.of(truss.forceUnit()) + ")";
        List<String> header = new ArrayList<>(List.of("variant"));
        truss.members().forEach(member -> header.add(member.name() + unit));
        variants.get(0).solution().reactions().forEach(each -> header.add(each.reaction().name() + unit));
        List<CsvTable.Row> rows = IntStream.range(0, variants.size())
                .mapToObj(i -> new CsvTable.Row(i + 2L, key(variants.get(i)))).toList();
        return new CsvTable(header, rows);
    }

    private List<String> key(Variant variant) {
        List<String> cells = new ArrayList<>(List.of(Integer.toString(variant.number())));
        variant.solution().members().forEach(each -> cells.add(plain(each.force())));
        variant.solution().reactions().forEach(each -> cells.add(plain(each.force())));
        return cells;
    }

    private String plain(double newtons) {
        return SIX.number(inTrussUnit(newtons)).replace('\u2212', '-').replace("\u202f", "").toLowerCase(Locale.ROOT);
    }
}
