package kingpost.statics;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Unit;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** A worked example from a book, as a file in the test resources with its source. */
public final class PublishedCase {

    String id;
    String topic;
    String source;
    String units;
    Map<String, List<JsonElement>> joints;
    List<String> members;
    Map<String, List<JsonElement>> supports;
    Map<String, List<Double>> loads;
    Map<String, Double> published;
    Map<String, Double> publishedReactions;
    Map<String, Double> computed;
    Map<String, Double> computedReactions;
    List<List<String>> zeroRounds;

    public static PublishedCase of(String id) {
        try (Reader reader = new InputStreamReader(
                PublishedCase.class.getResourceAsStream("cases/" + id + ".json"), StandardCharsets.UTF_8)) {
            return new Gson().fromJson(reader, PublishedCase.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public TrussModel truss() {
        TrussBuilder<TrussModel> builder = new TrussBuilder<>(id, Function.identity());
        builder.units(units.contains("ft") ? StructuralUnits.ft : units.contains("mm") ? StructuralUnits.mm
                : StructuralUnits.m, forceUnit());
        joints.forEach((name, place) -> builder.joint(name, number(place.get(0)), number(place.get(1)),
                place.size() > 2 ? number(place.get(2)) : 0));
        members.forEach(m -> builder.member(m.substring(0, m.indexOf('-')), m.substring(m.indexOf('-') + 1)));
        supports.forEach((joint, blocked) -> support(builder, joint, blocked));
        loads.forEach((joint, f) -> builder.load(joint, f.get(0), f.get(1), f.size() > 2 ? f.get(2) : 0));
        return builder.build();
    }

    Unit<?> forceUnit() {
        return units.startsWith("lb") ? StructuralUnits.lbf : units.startsWith("N") ? StructuralUnits.N
                : StructuralUnits.kN;
    }

    /** Newtons in the case's unit of force. */
    double inUnit(double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).in(forceUnit());
    }

    /** Half a unit in the last printed place; a whole number is taken to be printed to three figures. */
    static double precision(double printed) {
        String text = Double.toString(Math.abs(printed));
        String decimals = text.substring(text.indexOf('.') + 1);
        if (printed == 0) {
            return 1e-9;
        }
        if (!decimals.equals("0")) {
            return 0.5 * Math.pow(10, -decimals.length()) * (1 + 1e-9);
        }
        return 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(printed))) - 2);
    }

    @Override
    public String toString() {
        return id + ": " + topic + " [" + source + "]";
    }

    private static void support(TrussBuilder<?> builder, String joint, List<JsonElement> blocked) {
        boolean x = false;
        boolean y = false;
        for (JsonElement direction : blocked) {
            x |= direction.isJsonPrimitive() && direction.getAsString().equals("x");
            y |= direction.isJsonPrimitive() && direction.getAsString().equals("y");
        }
        if (x && y && blocked.size() == builderPin(blocked)) {
            builder.pin(joint);
            return;
        }
        for (JsonElement direction : blocked) {
            builder.link(joint, direction(direction));
        }
    }

    private static int builderPin(List<JsonElement> blocked) {
        return blocked.stream().anyMatch(b -> b.isJsonPrimitive() && b.getAsString().equals("z")) ? 3 : 2;
    }

    private static Direction direction(JsonElement direction) {
        if (direction.isJsonPrimitive()) {
            return switch (direction.getAsString()) {
                case "x" -> Direction.RIGHT;
                case "y" -> Direction.UP;
                default -> Direction.NEAR;
            };
        }
        return Direction.slope(direction.getAsJsonArray().get(0).getAsDouble(),
                direction.getAsJsonArray().get(1).getAsDouble(),
                direction.getAsJsonArray().size() > 2 ? direction.getAsJsonArray().get(2).getAsDouble() : 0);
    }

    /** A number, "4/3", "sqrt(3)" or "-3*sqrt(3)/2". */
    private static double number(JsonElement element) {
        if (element.getAsJsonPrimitive().isNumber()) {
            return element.getAsDouble();
        }
        String text = element.getAsString();
        double sign = text.startsWith("-") ? -1 : 1;
        String[] fraction = text.replace("-", "").split("/");
        double value = 1;
        for (String factor : fraction[0].split("\\*")) {
            value *= factor.startsWith("sqrt(") ? Math.sqrt(Double.parseDouble(factor.substring(5, factor.length() - 1)))
                    : Double.parseDouble(factor);
        }
        return sign * value / (fraction.length == 2 ? Double.parseDouble(fraction[1]) : 1);
    }
}
