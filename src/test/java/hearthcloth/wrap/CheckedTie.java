package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the tie and the object of a row of the check tables (docs/sources.md#two-derivations). */
final class CheckedTie {

    private static final Pattern BOX = Pattern.compile("([\\d.]+)x([\\d.]+)x([\\d.]+)");
    private static final Pattern MARKED = Pattern.compile("\\b([LrHD])([\\d.]+)");

    /**
     * Shoulder and mouth radius in cm of the first table's bottles, which the table leaves out: the only whole or half
     * shoulder heights, and mouths to half a millimetre, that give the row's p1, p2 and S together. From memory there; docs/sources.md#wine-bottle.
     */
    private static final Map<String, double[]> PROFILES = Map.of(
            "wine", new double[] {19, 1.5},
            "sake", new double[] {18, 1.5},
            "1.8", new double[] {25, 1.7},
            "500", new double[] {14, 1.3},
            "beer", new double[] {13, 1.3},
            "magnum", new double[] {22, 1.6});

    private CheckedTie() {}

    static Length cm(double cm) {
        return new Length(Rounding.NEAREST.whole(cm * 1e7));
    }

    static double cm(Length length) {
        return length.nm() / 1e7;
    }

    static Tie tie(String name) {
        return switch (name) {
            case "four-corner" -> Tie.FOUR_CORNER;
            case "edge-along-edge" -> Tie.EDGE_ALONG_EDGE;
            case "errand" -> Tie.ERRAND;
            case "flat", "flat wrap" -> Tie.FLAT;
            case "two-knot", "two-knot (rolled mat)" -> Tie.TWO_KNOT;
            case "bottle", "one bottle" -> Tie.ONE_BOTTLE;
            case "two bottles" -> Tie.TWO_BOTTLES;
            case "round", "ball" -> Tie.ROUND;
            case "book wrap", "two books" -> Tie.BOOKS;
            case "roll" -> Tie.ROLL;
            default -> throw new AssertionError(name);
        };
    }

    static Gift gift(Tie tie, String object) {
        return switch (tie) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND, FLAT -> box(object);
            case TWO_KNOT -> object.contains("x") ? box(object) : roll(object);
            case ONE_BOTTLE -> bottle(object, profile(object)[0], profile(object)[1]);
            // the two-bottle rows of the first table all used a mouth of radius 1.6 cm
            case TWO_BOTTLES -> new Gift.TwoBottles(bottle(object, 0.6 * marked(object, 'H'), 1.6));
            case ROUND -> new Gift.Round(cm(marked(object, 'D')));
            case BOOKS -> books(object);
            case ROLL -> roll(object);
        };
    }

    private static Gift.Box box(String object) {
        Matcher m = found(BOX, object);
        return new Gift.Box(side(m, 1), side(m, 2), side(m, 3));
    }

    private static Gift.Books books(String object) {
        Matcher m = found(BOX, object);
        Length one = side(m, 1);
        Length two = side(m, 2);
        return new Gift.Books(one.max(two), one.min(two), side(m, 3));
    }

    private static Gift.Roll roll(String object) {
        return new Gift.Roll(cm(2 * marked(object, 'r')), cm(marked(object, 'L')));
    }

    private static Gift.Bottle bottle(String object, double shoulder, double mouth) {
        return new Gift.Bottle(cm(2 * marked(object, 'r')), cm(marked(object, 'H')), cm(2 * mouth), cm(shoulder));
    }

    private static double[] profile(String object) {
        return PROFILES.entrySet().stream()
                .filter(entry -> object.startsWith(entry.getKey()))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    static double marked(String object, char mark) {
        Matcher m = MARKED.matcher(object);
        while (m.find()) {
            if (m.group(1).charAt(0) == mark) {
                return Double.parseDouble(m.group(2));
            }
        }
        throw new AssertionError(mark + " in " + object);
    }

    private static Matcher found(Pattern pattern, String text) {
        Matcher m = pattern.matcher(text);
        if (!m.find()) {
            throw new AssertionError(text);
        }
        return m;
    }

    private static Length side(Matcher m, int group) {
        return cm(Double.parseDouble(m.group(group)));
    }
}
