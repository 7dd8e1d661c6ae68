package kingpost.diagram;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Step;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** Writes the figures of the examples to a directory, with one page to look at them all; run it by hand. */
final class FigureGallery {

    private FigureGallery() {
    }

    public static void main(String[] arguments) throws IOException {
        Path directory = Files.createDirectories(Path.of(arguments[0]));
        StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8><body style='background:#444'>");
        for (Map.Entry<String, Svg> figure : figures().entrySet()) {
            String text = figure.getValue().toText();
            Files.writeString(directory.resolve(figure.getKey() + ".svg"), text, StandardCharsets.UTF_8);
            page.append("<p style='color:#fff'>").append(figure.getKey()).append("<br>").append(text).append("</p>");
        }
        Files.writeString(directory.resolve("index.html"), page, StandardCharsets.UTF_8);
    }

    static Map<String, Svg> figures() {
        Map<String, Svg> figures = new LinkedHashMap<>();
        for (TrussModel truss : Example.all()) {
            String name = truss.name().replaceAll("[^A-Za-z0-9]+", "-") + "-" + truss.members().size();
            figures.put("truss-" + name, TrussFigure.of(truss));
            Solution solution = Solver.solve(truss);
            figures.put("forces-" + name, ForceFigure.of(solution));
            if (ForceDiagram.of(solution) instanceof ForceDiagram.Drawn diagram) {
                figures.put("diagram-" + name, ForceDiagramFigure.of(diagram));
            }
            if (truss.members().size() < 24) {
                truss.joints().forEach(joint -> figures.put("polygon-" + name + "-" + joint.name(),
                        ForcePolygonFigure.of(ForcePolygon.of(solution, joint.name()))));
            }
            for (Step step : solution.steps()) {
                if (step instanceof Step.AtSection section) {
                    figures.put("section-" + name + "-" + String.join("-", section.part()),
                            SectionFigure.of(truss, section));
                }
                if (step instanceof Step.AtJoint at && truss.members().size() < 24) {
                    figures.put("body-" + name + "-" + at.number(), FreeBodyFigure.of(truss, at));
                    figures.put("answers-" + name + "-" + at.number(),
                            FreeBodyFigure.of(truss, at, FreeBodyFigure.Shows.ANSWERS));
                    figures.put("symbols-" + name + "-" + at.number(),
                            FreeBodyFigure.of(truss, at, FreeBodyFigure.Shows.SYMBOLS));
                    figures.put("blank-" + name + "-" + at.number(), FreeBodyFigure.blank(truss, at.joint()));
                }
            }
        }
        InfluenceFigureTest.lines().forEach(line -> {
            String name = figures.size() + "-" + line.truss().members().size();
            figures.put("influence-" + name, InfluenceFigure.of(line));
            TrainEffect effect = TrainEffect.of(line, InfluenceFigureTest.train(line.truss()));
            effect.largest().ifPresent(at -> figures.put("train-most-" + name, InfluenceFigure.of(line, at)));
            effect.smallest().ifPresent(at -> figures.put("train-least-" + name, InfluenceFigure.of(line, at)));
            figures.put("uniform-" + name, InfluenceFigure.of(UniformEffect.of(line,
                    Quantity.of(8, StructuralUnits.kN_per_m))));
        });
        figures.put("truss-long", TrussFigure.of(Example.bridge(200, 3, 3, 1)));
        figures.put("truss-longish", TrussFigure.of(Example.bridge(30, 3, 3, 1)));
        return figures;
    }
}
