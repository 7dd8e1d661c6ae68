package kingpost.form;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;

/** Every form in usual proportions, with a load at every inner joint of the chord that carries the deck or the roof. */
public final class FormTrusses {

    private static final Set<Form> ROOFS = EnumSet.of(Form.KING_POST, Form.QUEEN_POST, Form.PRATT_ROOF, Form.HOWE_ROOF,
            Form.FINK, Form.SCISSORS);

    private FormTrusses() {
    }

    /** Every form with every count of panels from 2 to 12 that it can have. */
    public static Stream<TrussModel> all() {
        return Stream.of(Form.values()).flatMap(form -> IntStream.rangeClosed(2, 12).filter(form::allows)
                .mapToObj(n -> loaded(form, n)));
    }

    /** Panels of 4 m and 6 m high, or rafters that rise 1 in 2; 40 kN or 12.5 kN at each joint. */
    public static TrussModel loaded(Form form, int panels) {
        boolean roof = ROOFS.contains(form);
        double span = roof ? 2.5 * panels : 4.0 * panels;
        TrussModel bare = builder(form, span, roof ? span / 4 : 6, panels).build();
        TrussBuilder<TrussModel> builder = builder(form, span, roof ? span / 4 : 6, panels)
                .named(form.title() + " of " + panels + " panels");
        String last = bare.supports().get(1).joint();
        for (String joint : joints(bare)) {
            if (joint.startsWith(roof ? "U" : "L") && !joint.equals("L0") && !joint.equals(last)) {
                builder.load(joint, roof ? 12.5 : 40, Direction.DOWN);
            }
        }
        return builder.build();
    }

    private static TrussBuilder<TrussModel> builder(Form form, double span, double rise, int panels) {
        return form.of(span, rise, panels, Function.<TrussModel>identity()).units(StructuralUnits.m, StructuralUnits.kN);
    }

    private static List<String> joints(TrussModel truss) {
        return truss.joints().stream().map(Joint::name).toList();
    }
}
