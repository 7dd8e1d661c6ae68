/**
 * Quantities with units: {@link kingpost.units.Quantity} over the JSR-385 unit types, the units of structural work in
 * {@link kingpost.units.StructuralUnits}, and how a quantity is written and read
 * ({@link kingpost.units.EngineeringFormat}). Read {@link kingpost.units.Quantity} first.
 *
 * <p>The one package that imports the JSR-385 implementation; elsewhere only the standard's {@code javax.measure}
 * types appear. Here too is {@link kingpost.units.CalculationException}, the root of every error whose message is
 * meant for the person at the notebook. Nothing here knows of trusses. Arguments and results are not null unless said.
 */
package kingpost.units;
