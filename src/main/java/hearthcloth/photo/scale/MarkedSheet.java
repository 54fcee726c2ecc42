package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import java.util.List;

/**
 * A measuring sheet as it was found: which of its marks show, and exactly where.
 *
 * @param marks each with its four corners in raw pixels, to a fraction of a pixel
 * @param paper about where the paper ends, in raw pixels
 * @param white a part of it that nothing is printed on, in raw pixels
 * @param sharpness mean share of the change at the marks' sides that happens within two pixels
 */
public record MarkedSheet(List<Placed> marks, List<Point> paper, List<Point> white, double sharpness) {

    public MarkedSheet {
        marks = List.copyOf(marks);
        paper = List.copyOf(paper);
        white = List.copyOf(white);
    }

    /**
     * One corner of a mark.
     *
     * @param print where it is on the print, in millimetres
     * @param raw where it shows, in raw pixels
     * @param deviation of that, in pixels
     */
    public record Placed(Point print, Point raw, double deviation) {}
}
