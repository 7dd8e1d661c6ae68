package kingpost.notebook;

import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * Quantities by the word of their unit: {@code kN(12)}, {@code mm2(1550)}, {@code ksi(36)}. One method for each unit
 * of {@link StructuralUnits}, by the same name; a test keeps the two in step.
 */
public final class UnitWords {

    private UnitWords() {
    }

    /** A plain number, without a unit. */
    public static Quantity number(double value) {
        return Quantity.of(value);
    }

    /** Metres. */
    public static Quantity m(double value) {
        return Quantity.of(value, StructuralUnits.m);
    }

    /** Millimetres. */
    public static Quantity mm(double value) {
        return Quantity.of(value, StructuralUnits.mm);
    }

    /** Centimetres. */
    public static Quantity cm(double value) {
        return Quantity.of(value, StructuralUnits.cm);
    }

    /** Kilometres. */
    public static Quantity km(double value) {
        return Quantity.of(value, StructuralUnits.km);
    }

    /** Inches. */
    public static Quantity in(double value) {
        return Quantity.of(value, StructuralUnits.in);
    }

    /** Inches. */
    public static Quantity inch(double value) {
        return Quantity.of(value, StructuralUnits.inch);
    }

    /** Feet. */
    public static Quantity ft(double value) {
        return Quantity.of(value, StructuralUnits.ft);
    }

    /** Yards. */
    public static Quantity yd(double value) {
        return Quantity.of(value, StructuralUnits.yd);
    }

    /** Kilograms. */
    public static Quantity kg(double value) {
        return Quantity.of(value, StructuralUnits.kg);
    }

    /** Tonnes. */
    public static Quantity t(double value) {
        return Quantity.of(value, StructuralUnits.t);
    }

    /** Pounds of mass. */
    public static Quantity lb(double value) {
        return Quantity.of(value, StructuralUnits.lb);
    }

    /** Seconds. */
    public static Quantity sec(double value) {
        return Quantity.of(value, StructuralUnits.sec);
    }

    /** Newtons. */
    public static Quantity N(double value) {
        return Quantity.of(value, StructuralUnits.N);
    }

    /** Kilonewtons. */
    public static Quantity kN(double value) {
        return Quantity.of(value, StructuralUnits.kN);
    }

    /** Meganewtons. */
    public static Quantity MN(double value) {
        return Quantity.of(value, StructuralUnits.MN);
    }

    /** Pounds of force. */
    public static Quantity lbf(double value) {
        return Quantity.of(value, StructuralUnits.lbf);
    }

    /** Kips. */
    public static Quantity kip(double value) {
        return Quantity.of(value, StructuralUnits.kip);
    }

    /** Square millimetres. */
    public static Quantity mm2(double value) {
        return Quantity.of(value, StructuralUnits.mm2);
    }

    /** Square centimetres. */
    public static Quantity cm2(double value) {
        return Quantity.of(value, StructuralUnits.cm2);
    }

    /** Square metres. */
    public static Quantity m2(double value) {
        return Quantity.of(value, StructuralUnits.m2);
    }

    /** Square inches. */
    public static Quantity in2(double value) {
        return Quantity.of(value, StructuralUnits.in2);
    }

    /** Square feet. */
    public static Quantity ft2(double value) {
        return Quantity.of(value, StructuralUnits.ft2);
    }

    /** Cubic millimetres. */
    public static Quantity mm3(double value) {
        return Quantity.of(value, StructuralUnits.mm3);
    }

    /** Cubic centimetres. */
    public static Quantity cm3(double value) {
        return Quantity.of(value, StructuralUnits.cm3);
    }

    /** Cubic metres. */
    public static Quantity m3(double value) {
        return Quantity.of(value, StructuralUnits.m3);
    }

    /** Cubic inches. */
    public static Quantity in3(double value) {
        return Quantity.of(value, StructuralUnits.in3);
    }

    /** Cubic feet. */
    public static Quantity ft3(double value) {
        return Quantity.of(value, StructuralUnits.ft3);
    }

    /** Millimetres to the fourth. */
    public static Quantity mm4(double value) {
        return Quantity.of(value, StructuralUnits.mm4);
    }

    /** Centimetres to the fourth. */
    public static Quantity cm4(double value) {
        return Quantity.of(value, StructuralUnits.cm4);
    }

    /** Inches to the fourth. */
    public static Quantity in4(double value) {
        return Quantity.of(value, StructuralUnits.in4);
    }

    /** Pascals. */
    public static Quantity Pa(double value) {
        return Quantity.of(value, StructuralUnits.Pa);
    }

    /** Kilopascals. */
    public static Quantity kPa(double value) {
        return Quantity.of(value, StructuralUnits.kPa);
    }

    /** Megapascals, N/mm². */
    public static Quantity MPa(double value) {
        return Quantity.of(value, StructuralUnits.MPa);
    }

    /** Gigapascals. */
    public static Quantity GPa(double value) {
        return Quantity.of(value, StructuralUnits.GPa);
    }

    /** Kilonewtons per square metre. */
    public static Quantity kN_per_m2(double value) {
        return Quantity.of(value, StructuralUnits.kN_per_m2);
    }

    /** Pounds of force per square inch. */
    public static Quantity psi(double value) {
        return Quantity.of(value, StructuralUnits.psi);
    }

    /** Kips per square inch. */
    public static Quantity ksi(double value) {
        return Quantity.of(value, StructuralUnits.ksi);
    }

    /** Pounds of force per square foot. */
    public static Quantity psf(double value) {
        return Quantity.of(value, StructuralUnits.psf);
    }

    /** Kips per square foot. */
    public static Quantity ksf(double value) {
        return Quantity.of(value, StructuralUnits.ksf);
    }

    /** Newtons per metre. */
    public static Quantity N_per_m(double value) {
        return Quantity.of(value, StructuralUnits.N_per_m);
    }

    /** Newtons per millimetre. */
    public static Quantity N_per_mm(double value) {
        return Quantity.of(value, StructuralUnits.N_per_mm);
    }

    /** Kilonewtons per metre. */
    public static Quantity kN_per_m(double value) {
        return Quantity.of(value, StructuralUnits.kN_per_m);
    }

    /** Pounds of force per foot. */
    public static Quantity plf(double value) {
        return Quantity.of(value, StructuralUnits.plf);
    }

    /** Kips per foot. */
    public static Quantity klf(double value) {
        return Quantity.of(value, StructuralUnits.klf);
    }

    /** Newton metres. */
    public static Quantity Nm(double value) {
        return Quantity.of(value, StructuralUnits.Nm);
    }

    /** Kilonewton metres. */
    public static Quantity kNm(double value) {
        return Quantity.of(value, StructuralUnits.kNm);
    }

    /** Pound-feet of moment. */
    public static Quantity lbf_ft(double value) {
        return Quantity.of(value, StructuralUnits.lbf_ft);
    }

    /** Kip-feet of moment. */
    public static Quantity kip_ft(double value) {
        return Quantity.of(value, StructuralUnits.kip_ft);
    }

    /** Kip-inches of moment. */
    public static Quantity kip_in(double value) {
        return Quantity.of(value, StructuralUnits.kip_in);
    }

    /** Kilograms per cubic metre. */
    public static Quantity kg_per_m3(double value) {
        return Quantity.of(value, StructuralUnits.kg_per_m3);
    }

    /** Kilonewtons per cubic metre. */
    public static Quantity kN_per_m3(double value) {
        return Quantity.of(value, StructuralUnits.kN_per_m3);
    }

    /** Pounds of force per cubic foot. */
    public static Quantity pcf(double value) {
        return Quantity.of(value, StructuralUnits.pcf);
    }

    /** Radians. */
    public static Quantity rad(double value) {
        return Quantity.of(value, StructuralUnits.rad);
    }

    /** Degrees. */
    public static Quantity deg(double value) {
        return Quantity.of(value, StructuralUnits.deg);
    }

    /** Hundredths. */
    public static Quantity percent(double value) {
        return Quantity.of(value, StructuralUnits.percent);
    }
}
