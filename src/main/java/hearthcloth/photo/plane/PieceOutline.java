package hearthcloth.photo.plane;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import java.util.List;

/**
 * The outline of a piece: its corners on the floor and in the picture, and the measure of each side.
 *
 * @param floor corners in millimetres from the sheet's corner, in order round it
 * @param picture the same corners in pixels of the upright picture
 * @param sides side i runs from corner i to the next
 */
public record PieceOutline(List<Point> floor, List<Point> picture, List<MeasuredLength> sides) {

    public PieceOutline {
        floor = List.copyOf(floor);
        picture = List.copyOf(picture);
        sides = List.copyOf(sides);
    }

    /** The same outline in the same picture at {@code times} the size. */
    public PieceOutline enlarged(double times) {
        return new PieceOutline(
                floor, picture.stream().map(place -> place.times(times)).toList(), sides);
    }

    /** The area in square millimetres. */
    public double areaMm2() {
        return Math.abs(Polygons.signedArea(floor));
    }
}
