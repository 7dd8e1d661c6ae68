package kingpost.marking;

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
            case UNEXPLAINED -> slip.subject() + " is wrong; no single slip explains it.";
        };
        return said.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + said.substring(1);
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
        if (slip.subject().isEmpty()) {
            return "a value was rounded" + carry;
        }
        return slip.other().isEmpty() ? slip.subject() + " was rounded" + carry
                : slip.subject() + " was rounded to " + slip.other().replace('-', '\u2212') + carry;
    }

    private static String tenfold(Slip slip) {
        int power = Integer.parseInt(slip.other());
        String factor = "1" + "0".repeat(Math.abs(power));
        return slip.subject() + " is " + factor + " times too " + (power > 0 ? "large" : "small")
                + ": look at the decimal point and the unit.";
    }

    private static String where(Slip slip) {
        return slip.where().accept(new Place.Visitor<String>() {
            @Override
            public String joint(Place.AtJoint place) {
                return " in the equations of joint " + place.joint();
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
