package hearthcloth.sew;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import java.util.List;

/**
 * Numbers and names as one maker says them to another.
 *
 * <p>A number that lies on the maker's ruler is written as it is; one that does not is written on a finer ruler instead
 * of being moved, and only what no ruler shows is called "about".
 */
record MakerWords(Ruler ruler) {

    /** The stitch length said in a step; machines are set in millimetres everywhere (docs/sources.md#stitch-length). */
    static final String STITCH = "2.5 mm";

    /** How far from a fold an edgestitched row lies: ¹⁄₁₆ in, 1 to 2 mm (common practice, no source). */
    String edgestitch() {
        return ruler.isMetric() ? "1–2 mm" : "¹⁄₁₆ in (1–2 mm)";
    }

    /** An allowance, fold or distance, exact wherever a ruler can show it. */
    String exact(Length length) {
        List<Ruler> rulers = ruler.isMetric()
                ? List.of(ruler, Ruler.SIXTEENTHS)
                : List.of(ruler, Ruler.SIXTEENTHS, Ruler.MILLIMETRES);
        for (Ruler finer : rulers) {
            if (isOn(finer, length)) {
                return finer.write(length, Rounding.NEAREST);
            }
        }
        return "about " + ruler.write(length, Rounding.NEAREST);
    }

    /**
     * A cut size, on the ruler's marks as planned; rounded up to the next one should the plan be read on another ruler.
     */
    String cut(Length length) {
        return ruler.write(length, Rounding.UP);
    }

    String cut(Size size) {
        return ruler.write(size, Rounding.UP);
    }

    /** The size that the work should have, to the nearest mark. */
    String measured(Size size) {
        String about = isOn(ruler, size.width()) && isOn(ruler, size.height()) ? "" : "about ";
        return about + ruler.write(size, Rounding.NEAREST);
    }

    String near(Length length) {
        return ruler.write(length, Rounding.NEAREST);
    }

    /** A length to the nearest mark; less than one mark is said so. */
    String about(Length length) {
        return shows(length) ? "about " + near(length) : "less than " + ruler.write(ruler.step(), Rounding.NEAREST);
    }

    /** Distances with the unit once: {@code 3⅛, 5 and 9¼ in}. */
    String near(List<Length> lengths) {
        List<String> numbers = lengths.stream()
                .map(length -> ruler.number(length, Rounding.NEAREST))
                .distinct()
                .toList();
        return list(numbers) + " " + ruler.unit().symbol();
    }

    /** Whether a length is half a mark or more; anything less is lost in the width of a thread. */
    boolean shows(Length length) {
        return ruler.mark(length, Rounding.NEAREST).isPositive();
    }

    static boolean isOn(Ruler ruler, Length length) {
        return ruler.mark(length, Rounding.NEAREST).equals(length);
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String list(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** A patch by its name in a sentence. */
    static String patch(Patch patch) {
        return switch (kind(patch.place())) {
            case HEARTH -> "the hearth";
            case BAR -> "bar " + patch.place().label();
            case PART -> "part " + patch.place().label();
            case FREE -> free((Place.Free) patch.place());
        };
    }

    private static String free(Place.Free place) {
        return place.task() == 0 ? "patch " + place.number() : place.id();
    }

    private enum Kind {
        HEARTH,
        BAR,
        PART,
        FREE
    }

    private static Kind kind(Place place) {
        if (place instanceof Place.Bar bar) {
            return bar.part() == 0 ? Kind.BAR : Kind.PART;
        }
        return place instanceof Place.Hearth ? Kind.HEARTH : Kind.FREE;
    }

    static String face(Face face) {
        return face == Face.FRONT ? "front" : "back";
    }

    /**
     * The words for the edge on {@code side}, or where something lies that is sewn there: {@code to the right of},
     * {@code above}.
     */
    static String beside(Side side) {
        return switch (side) {
            case LEFT -> "to the left of";
            case RIGHT -> "to the right of";
            case TOP -> "above";
            case BOTTOM -> "below";
        };
    }

    static String capital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    /** {@code 1 piece}, {@code 3 pieces}. */
    static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
