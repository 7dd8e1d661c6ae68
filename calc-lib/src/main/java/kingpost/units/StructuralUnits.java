package kingpost.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;

import java.math.BigInteger;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;

/**
 * The units of structural work, metric and US customary.
 *
 * <p>Every factor is exact: the inch is 25.4 mm, the pound 0.45359237 kg, and the pound-force that mass times
 * 9.80665 m/s^2. Source: NIST Special Publication 811 (2008), Appendix B.8 and the footnotes of B.9.
 */
public final class StructuralUnits {

    // length
    public static final Unit<Length> m = METRE;
    public static final Unit<Length> mm = MILLI(METRE);
    public static final Unit<Length> cm = CENTI(METRE);
    public static final Unit<Length> km = KILO(METRE);
    public static final Unit<Length> in = METRE.transform(ratio("254", "10000"));
    public static final Unit<Length> inch = in;
    public static final Unit<Length> ft = METRE.transform(ratio("3048", "10000"));
    public static final Unit<Length> yd = METRE.transform(ratio("9144", "10000"));

    // mass and time
    public static final Unit<Mass> kg = KILOGRAM;
    public static final Unit<Mass> t = KILOGRAM.transform(ratio("1000", "1"));
    /** The pound of mass; the pound of force is {@link #lbf}. */
    public static final Unit<Mass> lb = KILOGRAM.transform(ratio("45359237", "100000000"));
    /** The second; not {@code s}, which notebooks use for a solution. */
    public static final Unit<Time> sec = SECOND;

    // force
    public static final Unit<Force> N = NEWTON;
    public static final Unit<Force> kN = KILO(NEWTON);
    public static final Unit<Force> MN = MEGA(NEWTON);
    public static final Unit<Force> lbf = NEWTON.transform(ratio("44482216152605", "10000000000000"));
    /** 1000 lbf. */
    public static final Unit<Force> kip = NEWTON.transform(ratio("44482216152605", "10000000000"));

    // area, section modulus, second moment of area
    public static final Unit<Area> mm2 = mm.pow(2).asType(Area.class);
    public static final Unit<Area> cm2 = cm.pow(2).asType(Area.class);
    public static final Unit<Area> m2 = m.pow(2).asType(Area.class);
    public static final Unit<Area> in2 = in.pow(2).asType(Area.class);
    public static final Unit<Area> ft2 = ft.pow(2).asType(Area.class);
    public static final Unit<Volume> mm3 = mm.pow(3).asType(Volume.class);
    public static final Unit<Volume> cm3 = cm.pow(3).asType(Volume.class);
    public static final Unit<Volume> m3 = m.pow(3).asType(Volume.class);
    public static final Unit<Volume> in3 = in.pow(3).asType(Volume.class);
    public static final Unit<Volume> ft3 = ft.pow(3).asType(Volume.class);
    public static final Unit<?> mm4 = mm.pow(4);
    public static final Unit<?> cm4 = cm.pow(4);
    public static final Unit<?> in4 = in.pow(4);

    // stress and pressure
    public static final Unit<Pressure> Pa = PASCAL;
    public static final Unit<Pressure> kPa = KILO(PASCAL);
    /** N/mm^2. */
    public static final Unit<Pressure> MPa = MEGA(PASCAL);
    public static final Unit<Pressure> GPa = GIGA(PASCAL);
    public static final Unit<Pressure> kN_per_m2 = kN.divide(m2).asType(Pressure.class);
    public static final Unit<Pressure> psi = lbf.divide(in2).asType(Pressure.class);
    public static final Unit<Pressure> ksi = kip.divide(in2).asType(Pressure.class);
    public static final Unit<Pressure> psf = lbf.divide(ft2).asType(Pressure.class);
    public static final Unit<Pressure> ksf = kip.divide(ft2).asType(Pressure.class);

    // force per length
    public static final Unit<?> N_per_m = N.divide(m);
    public static final Unit<?> N_per_mm = N.divide(mm);
    public static final Unit<?> kN_per_m = kN.divide(m);
    /** lbf/ft. */
    public static final Unit<?> plf = lbf.divide(ft);
    /** kip/ft. */
    public static final Unit<?> klf = kip.divide(ft);

    // moment
    public static final Unit<?> Nm = N.multiply(m);
    public static final Unit<?> kNm = kN.multiply(m);
    public static final Unit<?> lbf_ft = lbf.multiply(ft);
    public static final Unit<?> kip_ft = kip.multiply(ft);
    public static final Unit<?> kip_in = kip.multiply(in);

    // density and unit weight
    public static final Unit<?> kg_per_m3 = kg.divide(m3);
    public static final Unit<?> kN_per_m3 = kN.divide(m3);
    /** lbf/ft^3. */
    public static final Unit<?> pcf = lbf.divide(ft3);

    // angle and plain numbers
    public static final Unit<Angle> rad = RADIAN;
    public static final Unit<Angle> deg = RADIAN.transform(MultiplyConverter.ofPiExponent(1)
            .concatenate(ratio("1", "180")));
    /** The unit of a plain number. */
    public static final Unit<Dimensionless> one = AbstractUnit.ONE;
    public static final Unit<Dimensionless> percent = AbstractUnit.ONE.transform(ratio("1", "100"));

    private StructuralUnits() {
    }

    private static UnitConverter ratio(String dividend, String divisor) {
        return MultiplyConverter.ofRational(new BigInteger(dividend), new BigInteger(divisor));
    }
}
