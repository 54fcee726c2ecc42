package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import hearthcloth.measure.MeasureException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The reference, and where in the picture the maker says that it lies.
 *
 * @param corners its four corners in order round it, as shares of the upright picture's width and height; empty where it is to be
 *     found
 */
public record ShownSheet(ReferenceSheet sheet, List<Point> corners) {

    private static final String AT = " at ";

    /** A tap may come to lie a little beside the picture. */
    private static final double BESIDE = 0.05;

    public ShownSheet {
        corners = List.copyOf(corners);
    }

    /** A sheet that is to be found. */
    public static ShownSheet hidden(ReferenceSheet sheet) {
        return new ShownSheet(sheet, List.of());
    }

    /**
     * Reads what {@link ReferenceSheet#parse} reads, followed where she shows it by its corners, "a4 at 0.21 0.30, 0.44 0.31,
     * 0.43 0.62, 0.20 0.60": across and down, as shares of the upright picture.
     *
     * @throws MeasureException with a sentence for the maker
     */
    public static ShownSheet parse(String text) {
        int at = text.toLowerCase(Locale.ROOT).indexOf(AT);
        if (at < 0) {
            return hidden(ReferenceSheet.parse(text));
        }
        List<Point> corners = new ArrayList<>();
        for (String corner : text.substring(at + AT.length()).strip().split("\\s*[,;]\\s*", -1)) {
            corners.add(place(corner)
                    .orElseThrow(
                            () -> new RefusedException(PhotographingSentences.referenceCorner(Argument.text(corner)))));
        }
        if (corners.size() != 4) {
            throw new RefusedException(PhotographingSentences.referenceCorners(Argument.number(corners.size())));
        }
        return new ShownSheet(ReferenceSheet.parse(text.substring(0, at)), corners);
    }

    private static Optional<Point> place(String corner) {
        String[] numbers = corner.strip().split("\\s+", -1);
        try {
            Point place = new Point(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1]));
            return Optional.of(place).filter(ShownSheet::isInPicture);
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static boolean isInPicture(Point place) {
        return place.x() >= -BESIDE && place.x() <= 1 + BESIDE && place.y() >= -BESIDE && place.y() <= 1 + BESIDE;
    }

    /** The words that {@link #parse} reads, for a sheet that was named so. */
    public static String words(String sheet, List<Point> corners) {
        return sheet
                + AT
                + corners.stream()
                        .map(c -> String.format(Locale.ROOT, "%.4f %.4f", c.x(), c.y()))
                        .collect(Collectors.joining(", "));
    }

    public boolean isShown() {
        return !corners.isEmpty();
    }

    /** The corners in pixels of a picture of this size, in the order of the clock. */
    public List<Point> in(int width, int height) {
        return corners.stream()
                .map(c -> new Point(c.x() * width, c.y() * height))
                .toList();
    }
}
