package kingpost.diagram;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.form.Form;
import kingpost.graphic.ForceDiagram;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.LoadedChord;
import kingpost.statics.Envelope;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Step;
import kingpost.svg.Svg;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.StructuralUnits;

/**
 * Draws every figure of every ready-made form of 3 to 12 panels in several proportions and counts labels that lie on
 * others or on lines; takes minutes, so it is run by hand: {@code FormCampaign DIRECTORY [step]}. Pages with all figures
 * of a kind go to the directory.
 */
final class FormCampaign {

    private final Map<String, int[]> tally = new TreeMap<>();
    private final Map<String, StringBuilder> pages = new LinkedHashMap<>();

    public static void main(String[] arguments) throws IOException {
        FormCampaign campaign = new FormCampaign();
        List<TrussModel> trusses = trusses().toList();
        int step = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        for (int i = 0; i < trusses.size(); i += step) {
            campaign.draw(trusses.get(i));
        }
        Path directory = Files.createDirectories(Path.of(arguments[0]));
        for (Map.Entry<String, StringBuilder> page : campaign.pages.entrySet()) {
            Files.writeString(directory.resolve(page.getKey() + ".html"), "<!doctype html><meta charset=utf-8><body>"
                    + page.getValue(), StandardCharsets.UTF_8);
        }
        campaign.tally.forEach((kind, n) -> System.out.println(kind + ": " + n[0] + " figures, " + n[1] + " with clashes, "
                + n[2] + " with labels listed below, " + n[3] + " labels listed"));
    }

    /** Panels of 4 by 6; a span of 24 with a rise of 4 for any count; low, with a rise of a tenth. */
    private static Stream<TrussModel> trusses() {
        return Stream.of(Form.values()).flatMap(form -> IntStream.rangeClosed(2, 12).filter(form::allows).boxed()
                .flatMap(n -> Stream.of(loaded(form, 4.0 * n, 6, n), loaded(form, 24, 4, n), loaded(form, 30, 3, n))));
    }

    private static TrussModel loaded(Form form, double span, double rise, int panels) {
        double height = form == Form.FINK ? Math.min(rise, span * 0.4) : rise;
        TrussModel bare = builder(form, span, height, panels).build();
        TrussBuilder<TrussModel> builder = builder(form, span, height, panels)
                .named(form.title() + " of " + panels + " panels, " + span + " by " + height);
        List<String> top = bare.joints().stream().map(j -> j.name()).filter(j -> j.startsWith("U")).toList();
        List<String> deck = bare.joints().stream().map(j -> j.name()).filter(j -> j.startsWith("L")).toList();
        builder.loadCase("dead");
        deck.subList(1, deck.size() - 1).forEach(j -> builder.load(j, 12.5, Direction.DOWN));
        builder.loadCase("wind");
        builder.load(top.get(0), 7.5, Direction.slope(1, -2));
        builder.load(top.get(top.size() - 1), 20, Direction.UP);
        return builder.build();
    }

    private static TrussBuilder<TrussModel> builder(Form form, double span, double rise, int panels) {
        return form.of(span, rise, panels, java.util.function.Function.<TrussModel>identity())
                .units(StructuralUnits.m, StructuralUnits.kN);
    }

    private void draw(TrussModel truss) {
        count("truss", truss, TrussFigure.of(truss));
        Solution solution = Solver.solve(truss);
        count("forces", truss, ForceFigure.of(solution));
        if (ForceDiagram.of(solution) instanceof ForceDiagram.Drawn drawn) {
            count("diagram", truss, ForceDiagramFigure.of(drawn));
        }
        count("envelope", truss, EnvelopeFigure.of(Envelope.of(truss)));
        boolean first = true;
        for (Step step : solution.steps()) {
            if (step instanceof Step.Reactions reactions) {
                count("whole", truss, WholeBodyFigure.of(truss, reactions));
            } else if (step instanceof Step.AtSection section) {
                count("section", truss, SectionFigure.of(truss, section));
            } else if (step instanceof Step.AtJoint joint) {
                count("body", truss, FreeBodyFigure.of(truss, joint));
            }
            if (!(step instanceof Step.Reactions) && first) {
                count("progress", truss, ProgressFigure.of(solution, step));
                first = false;
            }
        }
        try {
            int members = truss.members().size();
            for (int m = 0; m < members; m += Math.max(1, members / 4)) {
                count("influence", truss, InfluenceFigure.of(InfluenceLine.of(truss, new Effect.OfMember(
                        truss.members().get(m)), LoadedChord.atSupports(truss))));
            }
        } catch (CalculationException noDeck) {
            count("influence", truss, TrussFigure.of(truss));
        }
    }

    private void count(String kind, TrussModel truss, Svg figure) {
        List<String> clashes = new ArrayList<>(Clashes.in(figure));
        if (figure.view().width() > 760 || figure.view().height() > 900) {
            clashes.add("is " + figure.view().width() + " by " + figure.view().height());
        }
        long listed = Clashes.textsOf(figure).stream().filter(t -> t.startsWith("No room"))
                .flatMap(t -> Stream.of(t.split(","))).count();
        int[] n = tally.computeIfAbsent(kind, k -> new int[4]);
        n[0]++;
        n[1] += clashes.isEmpty() ? 0 : 1;
        n[2] += listed > 0 ? 1 : 0;
        n[3] += (int) listed;
        if (!clashes.isEmpty()) {
            System.out.println(kind + " of " + truss.name() + ": " + clashes);
        }
        if (!kind.equals("body")) {
            pages.computeIfAbsent(kind, k -> new StringBuilder()).append("<p>").append(truss.name()).append("<br>")
                    .append(figure.toText()).append("</p>");
        }
    }
}
