package kingpost.truss;

import java.util.Optional;
import kingpost.units.Quantity;

/**
 * What a joint takes of a spread load: the half panels, or half members, that lie beside it.
 *
 * @param load      what the load is called: "self weight", "deck load"
 * @param intensity force per length, or force per area where there is a spacing
 * @param spacing   distance from truss to truss, which turns force per area into force per length
 * @param length    tributary length, in the truss's unit of length
 * @param measured  along what that length is measured
 * @param force     intensity times spacing times length, in the truss's unit of force
 */
public record Tributary(String load, Quantity intensity, Optional<Quantity> spacing, Quantity length,
                        Measured measured, Quantity force) {
}
