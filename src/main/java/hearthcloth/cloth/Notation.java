package hearthcloth.cloth;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one text form of a tree, for tests, stores and bug reports: {@code parse(print(tree))} equals the tree.
 *
 * <p>A patch is {@code place "fabric" width x height showing}, in exact millimetres: {@code hearth "oat" 342.9 x 342.9
 * same}, {@code 2C right "kelp" 101.6 x 546.1 right}, {@code 2C.1 right …} for a part of a joined bar,
 * {@code A1 "kelp" …} for a patch of free patchwork. A seam is {@code
 * (first |> second)} beside and {@code (first /> second)} below; the arrow points from the half that wraps over the one
 * that is wrapped, so {@code <|} and {@code </} say that the second wraps.
 */
public final class Notation {

    private static final Pattern PATCH =
            Pattern.compile("\\G\\s*(?:(hearth)|patch(\\d+)|(\\d+)([A-Z]+)(?:\\.(\\d+))? (left|top|right|bottom)"
                    + "|([A-Z]{1,4})(\\d{1,6}))"
                    + " \"((?:[^\"\\\\]|\\\\.)*+)\" ([\\d.]+) x ([\\d.]+) (same|right|wrong)");
    private static final Pattern SIGN = Pattern.compile("\\G\\s*(\\|>|<\\||/>|</)");

    /** The deepest nesting of seams that is read: far more than anybody sews, and few enough for every fold. */
    private static final int DEEPEST = 1_000;

    private final String text;
    private int at;
    private int depth;

    private Notation(String text) {
        this.text = text;
    }

    public static String print(Assembly assembly) {
        return assembly.fold(new Printed());
    }

    /**
     * Reads what {@link #print} wrote.
     *
     * @throws IllegalArgumentException naming the place in the text where it goes wrong
     * @throws EdgeMismatchException when the halves of a seam do not fit
     */
    public static Assembly parse(String text) {
        Notation notation = new Notation(text);
        Assembly assembly = notation.assembly();
        if (!text.substring(notation.at).isBlank()) {
            throw notation.wrong("the end");
        }
        return assembly;
    }

    private Assembly assembly() {
        skipBlank();
        if (at < text.length() && text.charAt(at) == '(') {
            if (++depth > DEEPEST) {
                throw wrong("depth <= " + DEEPEST);
            }
            at++;
            Assembly first = assembly();
            Matcher sign = next(SIGN, "|>, <|, /> or </");
            Join join = sign.group(1).contains("|") ? Join.BESIDE : Join.BELOW;
            Half wraps = sign.group(1).endsWith(">") ? Half.FIRST : Half.SECOND;
            Assembly second = assembly();
            skipBlank();
            if (at >= text.length() || text.charAt(at) != ')') {
                throw wrong(")");
            }
            at++;
            depth--;
            return Seam.of(join, wraps, first, second);
        }
        return patch(next(PATCH, "patch, ("));
    }

    private static Patch patch(Matcher m) {
        Size size = new Size(length(m.group(10)), length(m.group(11)));
        Showing showing = Showing.valueOf(m.group(12).toUpperCase(Locale.ROOT));
        return new Patch(place(m), m.group(9).replaceAll("\\\\(.)", "$1"), size, showing);
    }

    private static Place place(Matcher m) {
        if (m.group(1) != null) {
            return new Place.Hearth();
        }
        if (m.group(2) != null) {
            return new Place.Free(Integer.parseInt(m.group(2)));
        }
        if (m.group(7) != null) {
            return new Place.Free(Place.order(m.group(7)) + 1, Integer.parseInt(m.group(8)));
        }
        Side side = Side.valueOf(m.group(6).toUpperCase(Locale.ROOT));
        int part = m.group(5) == null ? 0 : Integer.parseInt(m.group(5));
        return new Place.Bar(Integer.parseInt(m.group(3)), Place.order(m.group(4)), side, part);
    }

    private static Length length(String millimetres) {
        return new Length(new BigDecimal(millimetres).movePointRight(6).longValueExact());
    }

    private Matcher next(Pattern pattern, String wanted) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.find(at) || matcher.start() != at) {
            throw wrong(wanted);
        }
        at = matcher.end();
        return matcher;
    }

    private void skipBlank() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private IllegalArgumentException wrong(String wanted) {
        String rest = text.substring(at, Math.min(text.length(), at + 20));
        return new IllegalArgumentException(
                "at letter " + (at + 1) + ": wanted " + wanted + ", found \"" + rest + "\"");
    }

    private record Printed() implements Assembly.Fold<String> {

        @Override
        public String patch(Patch patch) {
            String side =
                    patch.place() instanceof Place.Bar bar ? " " + bar.side().word() : "";
            return patch.place().id() + side + " \"" + patch.fabric().replaceAll("[\"\\\\]", "\\\\$0") + "\" "
                    + mm(patch.size().width()) + " x " + mm(patch.size().height()) + " "
                    + patch.showing().word();
        }

        @Override
        public String seam(Seam seam, String first, String second) {
            String line = seam.join() == Join.BESIDE ? "|" : "/";
            String sign = seam.wraps() == Half.FIRST ? line + ">" : "<" + line;
            return "(" + first + " " + sign + " " + second + ")";
        }

        private static String mm(Length length) {
            return length.toString().replace(" mm", "");
        }
    }
}
