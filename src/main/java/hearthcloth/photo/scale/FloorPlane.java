package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.plane.Homography;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;

/**
 * The floor as the picture shows it: raw pixels to millimetres and back, from a lens and the four corners of the sheet
 * (docs/sources.md#plane-measuring).
 *
 * <p>Millimetres start at the sheet's first corner, x along its width, y along its height.
 */
public final class FloorPlane {

    private final LensModel lens;
    private final Homography toFloor;
    private final Homography toPicture;

    private FloorPlane(LensModel lens, List<Point> straightCorners, List<Point> floor) {
        this.lens = lens;
        toFloor = Homography.of(straightCorners, floor);
        toPicture = Homography.of(floor, straightCorners);
    }

    /**
     * The plane in which a sheet lies.
     *
     * @param corners of the sheet in raw pixels, matching (0,0), (w,0), (w,h), (0,h)
     */
    static FloorPlane of(LensModel lens, List<Point> corners, double widthMm, double heightMm) {
        return new FloorPlane(lens, corners.stream().map(lens::straight).toList(), rectangle(widthMm, heightMm));
    }

    static List<Point> rectangle(double width, double height) {
        return List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height));
    }

    public LensModel lens() {
        return lens;
    }

    Point floor(Point raw) {
        return toFloor.map(lens.straight(raw));
    }

    Point raw(Point floor) {
        return lens.bent(straight(floor));
    }

    /** Where a place on the floor would show if the lens did not distort. */
    Point straight(Point floor) {
        return toPicture.map(floor);
    }

    /** Where a place lies on the floor that would show there if the lens did not distort. */
    Point ofStraight(Point straight) {
        return toFloor.map(straight);
    }

    /**
     * Pixels to a millimetre at a raw place: the square root of the ratio of areas, so the mean of the two directions.
     */
    double pixelsPerMm(Point raw) {
        Point at = floor(raw);
        Point right = floor(raw.plus(1, 0));
        Point below = floor(raw.plus(0, 1));
        double area =
                Math.abs((right.x() - at.x()) * (below.y() - at.y()) - (right.y() - at.y()) * (below.x() - at.x()));
        return 1 / Math.sqrt(Math.max(1e-12, area));
    }

    /**
     * This plane, followed by what it would be if each of its measured parts were one deviation off: each corner of the
     * sheet along both its sides, the lens, and the sheet's own two sides.
     *
     * @param cornerDeviation of the sheet's corners, in pixels
     */
    static List<FloorPlane> variants(
            LensModel lens, List<Point> corners, ReferenceSheet sheet, Turned size, double cornerDeviation) {
        List<FloorPlane> out = new ArrayList<>();
        out.add(of(lens, corners, size.width(), size.height()));
        for (int i = 0; i < 8; i++) {
            List<Point> moved = new ArrayList<>(corners);
            Point corner = corners.get(i / 2);
            Point towards = corners.get(Math.floorMod(i / 2 + (i % 2 == 0 ? 1 : -1), 4));
            moved.set(i / 2, corner.towards(towards, cornerDeviation / corner.to(towards)));
            out.add(of(lens, moved, size.width(), size.height()));
        }
        out.add(of(lens.with(lens.kappa() + lens.deviation(), 0), corners, size.width(), size.height()));
        out.addAll(ofOtherSizes(lens, corners, sheet, size));
        return out;
    }

    private static List<FloorPlane> ofOtherSizes(
            LensModel lens, List<Point> corners, ReferenceSheet sheet, Turned size) {
        double off = sheet.toleranceMm() / 2;
        return List.of(
                of(lens, corners, size.width() + off, size.height()),
                of(lens, corners, size.width(), size.height() + off));
    }

    /**
     * What the plane would be with each corner of the sheet one deviation off the floor: it then shows farther from the camera's
     * foot than it lies.
     *
     * @param focal the camera's focal length in pixels, about
     * @param liftMm the deviation of a corner's height
     */
    static List<FloorPlane> lifted(LensModel lens, List<Point> corners, Turned size, double focal, double liftMm) {
        FloorPlane flat = of(lens, corners, size.width(), size.height());
        List<Point> floor = rectangle(size.width(), size.height());
        Homography.Eye eye = Homography.of(
                        floor,
                        corners.stream()
                                .map(lens::straight)
                                .map(c -> c.plus(
                                        -lens.middle().x(), -lens.middle().y()))
                                .toList())
                .eye(focal);
        List<FloorPlane> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            List<Point> moved = new ArrayList<>(corners);
            moved.set(i, flat.raw(eye.foot().towards(floor.get(i), 1 + liftMm / eye.height())));
            out.add(of(lens, moved, size.width(), size.height()));
        }
        return out;
    }

    /** The same for a measuring sheet or several sheets: the plane under it, and that plane with each part of it one deviation off. */
    static List<FloorPlane> variants(SheetBend.Floor floor, ReferenceSheet sheet, Turned size) {
        List<FloorPlane> out = new ArrayList<>(of(floor.shown(), size));
        SheetBend.Shown likeliest = floor.shown().get(0);
        out.addAll(ofOtherSizes(likeliest.lens(), likeliest.corners(), sheet, size));
        return out;
    }

    static List<FloorPlane> of(List<SheetBend.Shown> shown, Turned size) {
        return shown.stream()
                .map(one -> of(one.lens(), one.corners(), size.width(), size.height()))
                .toList();
    }

    /** How far this is from what a camera of that focal length, in pixels, can show of a rectangle; see {@link Homography}. */
    double[] offCamera(Turned size, double focal) {
        List<Point> rectangle = rectangle(size.width(), size.height());
        Point middle = lens.middle();
        return Homography.of(
                        rectangle,
                        rectangle.stream()
                                .map(corner -> straight(corner).plus(-middle.x(), -middle.y()))
                                .toList())
                .offCamera(focal);
    }

    /** The sheet's sides, in millimetres, in the order its corners go round. */
    record Turned(double width, double height) {}
}
