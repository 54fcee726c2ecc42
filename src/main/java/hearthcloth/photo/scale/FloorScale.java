package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import java.util.ArrayList;
import java.util.List;


/**
 * What a picture's pixels are worth: the floor's plane as the sheet gives it, and how sure that is. Lets a corner that
 * the maker has dragged be measured again without the picture. Immutable.
 */
public final class FloorScale {

    /** What no model here covers, one standard deviation: creases, a lifted edge, cloth thickness, as a share. */
    private static final double CLOTH_SHARE = 0.0012;
    /** And in millimetres, for every edge. */
    private static final double CLOTH_MM = 0.10;
    /** A corner placed by hand: one standard deviation in pixels of the picture. */
    private static final double BY_HAND_PIXELS = 2;

    private final List<FloorPlane> planes;
    private final SheetFinder.Found found;
    private final int pictureWidth;
    private final int pictureHeight;

    public FloorScale(List<FloorPlane> planes, SheetFinder.Found found, PixelImage picture) {
        this(planes, found, picture.width, picture.height);
    }

    public FloorScale(List<FloorPlane> planes, SheetFinder.Found found, int pictureWidth, int pictureHeight) {
        this.planes = List.copyOf(planes);
        this.found = found;
        this.pictureWidth = pictureWidth;
        this.pictureHeight = pictureHeight;
    }

    /** Everything this is made of, to be kept and made again. */
    public KeptScale kept() {
        return KeptScale.of(planes, found, pictureWidth, pictureHeight);
    }

    /** Width of the upright picture that all picture places refer to, in pixels. */
    public int pictureWidth() {
        return pictureWidth;
    }

    public int pictureHeight() {
        return pictureHeight;
    }

    /** The sheet's corners in the picture. */
    public List<Point> sheetInPicture() {
        return found.corners();
    }

    /** Where a place of the picture lies on the floor, in millimetres. */
    public Point onFloor(Point picturePlace) {
        return plane().floor(picturePlace);
    }

    /** Where a place on the floor shows in the picture, in pixels. */
    public Point inPicture(Point floorPlace) {
        return plane().raw(floorPlace);
    }

    /** The picture's resolution at a place. */
    public double pixelsPerMm(Point picturePlace) {
        return plane().pixelsPerMm(picturePlace);
    }

    public FloorPlane plane() {
        return planes.get(0);
    }

    public double sheetSpanMm() {
        return Math.hypot(found.size().width(), found.size().height());
    }

    public Point sheetMiddle() {
        return new Point(found.size().width() / 2, found.size().height() / 2);
    }

    /** Measures an outline whose corners the maker has put where she wants them, in pixels of the picture. */
    public PieceOutline byHand(List<Point> corners) {
        List<MeasuredLength> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double own = BY_HAND_PIXELS * Math.sqrt(2) / pixelsPerMm(a.towards(b, 0.5));
            sides.add(measured(a, b, own));
        }
        return outline(corners, sides);
    }

    public PieceOutline outline(List<Point> corners, List<MeasuredLength> sides) {
        return new PieceOutline(corners.stream().map(this::onFloor).toList(), corners, sides);
    }

    /**
     * The length between two places of the picture.
     *
     * @param ownMm deviation of this length from how well its own ends were seen
     */
    public MeasuredLength measured(Point a, Point b, double ownMm) {
        double length = onFloor(a).to(onFloor(b));
        return MeasuredLength.mm(length, deviation(a, b, ownMm, planes.size()));
    }

    /** One standard deviation without the sheet's own tolerance: what the picture leaves open. */
    public double seenDeviation(Point a, Point b, double ownMm) {
        return deviation(a, b, ownMm, planes.size() - 2);
    }

    private double deviation(Point a, Point b, double ownMm, int count) {
        double length = onFloor(a).to(onFloor(b));
        double squares = ownMm * ownMm + Math.pow(CLOTH_SHARE * length, 2) + 2 * CLOTH_MM * CLOTH_MM;
        for (FloorPlane plane : planes.subList(1, count)) {
            squares += Math.pow(plane.floor(a).to(plane.floor(b)) - length, 2);
        }
        return Math.sqrt(squares);
    }
}
