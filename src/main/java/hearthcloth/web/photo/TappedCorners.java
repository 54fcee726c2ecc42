package hearthcloth.web.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.store.SavedPhoto;
import hearthcloth.web.kit.PageContext;
import hearthcloth.words.picturing.PicturingWords;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The corners of the sheet that she has tapped so far, as shares of the picture. They travel in the page's address, so that a tap
 * needs no script: a picture that is a button tells where it was pressed.
 */
record TappedCorners(List<Point> corners) {

    /** Longer side of the picture to tap on. */
    static final int SCREEN_PIXELS = 1600;

    /** Without a script the picture is this wide, in points of the screen; with one it is as wide as the page. */
    static final int WIDTH = 300;

    private static final int ALL = 4;

    TappedCorners {
        corners = List.copyOf(corners);
    }

    /**
     * The part of the page where she taps.
     *
     * @param marks corners tapped so far, in points of the picture
     * @param so the same as they travel in the form
     * @param words what to do next
     * @param named the reference as it was named
     */
    public record View(List<Point> marks, String so, String words, String named, int high) {

        public int wide() {
            return WIDTH;
        }

        public boolean isWhole() {
            return marks.size() == ALL;
        }

        /** The marks as SVG writes the places of a line. */
        public String line() {
            return marks.stream()
                    .map(mark -> String.format(Locale.ROOT, "%.1f,%.1f", mark.x(), mark.y()))
                    .collect(Collectors.joining(" "));
        }
    }

    /**
     * What the page shows of it.
     *
     * @param proportion the picture's height as a multiple of its width
     */
    View view(SavedPhoto photo, double proportion, PicturingWords words) {
        int high = (int) Math.round(WIDTH * proportion);
        return new View(
                corners.stream()
                        .map(c -> new Point(c.x() * WIDTH, c.y() * high))
                        .toList(),
                so(),
                words.refusedTap(next()),
                words.refusedReference(called(photo)),
                high);
    }

    /** With the tap that this form brings: in points of the picture, or, from a script, in shares. */
    static TappedCorners of(Context context) {
        TappedCorners before = of(PageContext.field(context, "corners"));
        String written = PageContext.field(context, "hundredths");
        boolean shares = !PageContext.field(context, "share").isEmpty();
        List<Point> all = new ArrayList<>(before.corners);
        if (!written.isEmpty()) {
            return of(written, 100);
        }
        if (shares) {
            all.addAll(of(PageContext.field(context, "share")).corners);
        } else if (isPressed(context)) {
            double high = number(PageContext.field(context, "high"), WIDTH);
            all.add(new Point(
                    number(PageContext.field(context, "at.x"), 0) / WIDTH,
                    number(PageContext.field(context, "at.y"), 0) / high));
        }
        return new TappedCorners(all.subList(0, Math.min(ALL, all.size())));
    }

    /** A press by the keyboard tells no place. */
    private static boolean isPressed(Context context) {
        return number(PageContext.field(context, "at.x"), 0) + number(PageContext.field(context, "at.y"), 0) > 0;
    }

    static TappedCorners of(String written) {
        return of(written, 1);
    }

    /**
     * The corners in a text.
     *
     * @param whole what the picture's width and height are called
     */
    private static TappedCorners of(String written, double whole) {
        List<Point> corners = new ArrayList<>();
        for (String corner : written.split(",", -1)) {
            String[] numbers = corner.strip().split(" ", -1);
            if (numbers.length == 2 && corners.size() < ALL) {
                Point place = new Point(number(numbers[0], -1) / whole, number(numbers[1], -1) / whole);
                if (place.x() >= 0 && place.x() <= 1 && place.y() >= 0 && place.y() <= 1) {
                    corners.add(place);
                }
            }
        }
        return new TappedCorners(corners);
    }

    private static double number(String text, double otherwise) {
        try {
            double number = Double.parseDouble(text);
            return Double.isFinite(number) ? number : otherwise;
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    boolean isWhole() {
        return corners.size() == ALL;
    }

    /** The reference with its corners, as it is kept. */
    String words(SavedPhoto photo) {
        return ShownSheet.words(photo.sheet().replaceFirst(" at .*", ""), corners);
    }

    String query() {
        return corners.isEmpty() ? "" : "?corners=" + so().replace(" ", "+") + "#tap";
    }

    private String so() {
        return corners.stream()
                .map(c -> String.format(Locale.ROOT, "%.4f %.4f", c.x(), c.y()))
                .collect(Collectors.joining(","));
    }

    /** The reference as a catalogue calls it: {@code A4}, {@code MEASURING}. */
    private static String called(SavedPhoto photo) {
        return ShownSheet.parse(photo.sheet()).sheet().name().split(" ", -1)[0].toUpperCase(Locale.ROOT);
    }

    /** How many are tapped, as a catalogue asks. */
    private String next() {
        return switch (corners.size()) {
            case 0 -> "none";
            case 1, 2 -> "some";
            case 3 -> "three";
            default -> "all";
        };
    }
}
