package kingpost.marking;

import java.util.List;
import kingpost.marking.Slip.Place;

/** A slip in a sentence, as a teacher writes it beside the answer. */
final class SlipWords {

    private SlipWords() {
    }

    static String of(Slip slip) {
        String said = switch (slip.kind()) {
            case WRONG_SENSE_WORD -> slip.subject() + " has the right size, but is called by the wrong sense.";
            case SENSE_REVERSED -> reversed(slip);
            case SENSE_NOT_STATED -> "No member's sense is stated; say tension or compression.";
            case SINE_COSINE_SWAPPED -> swapped(slip);
            case DIGITS_TRANSPOSED -> slip.subject() + ": two digits have changed places.";
            case LOAD_FORGOTTEN, FORCE_FORGOTTEN -> slip.subject() + " is left out" + where(slip) + ".";
            case WRONG_MEMBER_CARRIED -> slip.where() instanceof Place.InAnswer
                    ? slip.subject() + ": the value of " + slip.other() + " stands here."
                    : "The value of " + slip.other() + " is used for " + slip.subject() + where(slip) + ".";
            case ROUNDED_CARRIED -> rounded(slip);
            case POWER_OF_TEN -> tenfold(slip);
            case LOAD_MISPLACED -> slip.subject() + " is put at joint " + slip.other() + "; look again where it acts.";
            case DIRECTION_MISREAD -> slip.subject() + " is taken as " + slip.other() + "; look again at its direction.";
            case VALUES_EXCHANGED -> "the answers of " + slip.subject() + " and " + slip.other() + " have changed places.";
            case MIRRORED -> "each answer stands at the member that mirrors it: the truss was looked at from behind.";
            case WRONG_PANELS -> "the span was parted into " + slip.other() + " panels in place of " + slip.subject()
                    + ", so that every length along it is wrong.";
            case ANGLE_IN_RADIANS -> "sines and cosines were taken with the calculator set to radians; set it to degrees.";
            case SLOPE_AS_DEGREES -> "a slope in per cent was taken for an angle in degrees; its tangent is the slope.";
            case UNEXPLAINED -> slip.subject() + " is wrong; no single slip explains it.";
        };
        return said.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + said.substring(1);
    }

    /** What helps against it another time; empty where the slip's own words say it. */
    static String advice(Slip slip) {
        boolean written = slip.where() instanceof Place.InAnswer;
        return switch (slip.kind()) {
            case WRONG_SENSE_WORD -> "A member that pushes on its joints is in compression; one that pulls is in tension.";
            case SENSE_REVERSED -> slip.where() instanceof Place.Throughout ? "" : written
                    ? "Draw every unknown force as pulling; a negative answer then means compression."
                    : "A member found to push points towards the joint, in the free body and in the sums.";
            case SINE_COSINE_SWAPPED -> "Check with the slope: the longer side of its triangle goes with the larger part.";
            case DIGITS_TRANSPOSED -> "Read each number over once more when it is written down.";
            case LOAD_FORGOTTEN -> "Draw every load on the free body before the first sum.";
            case FORCE_FORGOTTEN -> "Count the forces on the free body, then the terms of the sum.";
            case WRONG_MEMBER_CARRIED -> "Write the member's name beside each number that is carried.";
            case VALUES_EXCHANGED -> "Write each answer beside its member in the figure first.";
            default -> "";
        };
    }

    private static String reversed(Slip slip) {
        if (slip.where() instanceof Place.Throughout) {
            return "All senses are counted the other way round: say which sense is positive.";
        }
        if (slip.where() instanceof Place.InAnswer) {
            return slip.subject() + " is taken in the reverse sense.";
        }
        return slip.subject() + " is put in against its true sense" + where(slip) + ".";
    }

    private static String swapped(Slip slip) {
        return slip.subject().isEmpty() ? "sine and cosine have changed places" + where(slip) + "."
                : "sine and cosine of " + slip.subject() + " have changed places" + where(slip) + ".";
    }

    private static String rounded(Slip slip) {
        String carry = " before it was used; carry one figure more than you state.";
        if (slip.subject().equals(Misreadings.SINES)) {
            return "sines and cosines were rounded to two figures; carry four, so that answers hold to three.";
        }
        if (slip.subject().isEmpty()) {
            return "a value was rounded" + carry;
        }
        return slip.other().isEmpty() ? slip.subject() + " was rounded" + carry
                : slip.subject() + " was rounded to " + slip.other().replace('-', '\u2212') + carry;
    }

    private static String tenfold(Slip slip) {
        int power = Integer.parseInt(slip.other());
        String factor = "1" + "0".repeat(Math.abs(power));
        String subject = slip.subject().isEmpty() ? "every answer" : slip.subject();
        return subject + " is " + factor + " times too " + (power > 0 ? "large" : "small")
                + ": look at the decimal point and the unit.";
    }

    private static String list(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String where(Slip slip) {
        return slip.where().accept(new Place.Visitor<String>() {
            @Override
            public String joint(Place.AtJoint place) {
                return " in the equations of joint " + place.joint();
            }

            @Override
            public String joints(Place.AtJoints place) {
                return " in the equations of joints " + list(place.joints());
            }

            @Override
            public String section(Place.AtSection place) {
                return " in the equations of the section through " + list(place.cut());
            }

            @Override
            public String reactions(Place.InReactions place) {
                return " in the equations for the reactions";
            }

            @Override
            public String answer(Place.InAnswer place) {
                return " where it is written down";
            }

            @Override
            public String throughout(Place.Throughout place) {
                return " throughout";
            }
        });
    }
}
