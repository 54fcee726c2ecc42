package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.SheetStiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a picture's pixels are worth on the floor, and how surely. A corner that the maker has dragged can be measured
 * by it again without the picture. Immutable.
 */
public final class FloorScale {

    /**
     * The deviation, as a share of a length, of what no model here covers: creases, a lifted edge, the thickness of
     * cloth.
     */
    private static final double CLOTH_SHARE = 0.0012;
    /** The deviation of the same causes in millimetres, for each of a length's two ends. */
    private static final double CLOTH_MM = 0.10;
    /** The deviation of a corner placed by hand, in pixels of the picture. */
    private static final double BY_HAND_PIXELS = 2;

    /** The corners of a sheet are not known better than this, in pixels. */
    private static final double LEAST_PIXELS = 0.15;
    /** The first planes: as read, then with what is seen in the picture one deviation off; what the sheet is like follows. */
    private static final int SEEN = 10;
    /** After them so many planes with a side of the sheet itself off. */
    private static final int SIZES = 2;
    /** A sheet has so many corners. */
    private static final int CORNERS = 4;

    private final List<FloorPlane> planes;
    private final SheetFinder.Found found;
    private final int pictureWidth;
    private final int pictureHeight;

    private FloorScale(List<FloorPlane> planes, SheetFinder.Found found, PixelImage picture) {
        this(planes, found, picture.width, picture.height);
    }

    public FloorScale(List<FloorPlane> planes, SheetFinder.Found found, int pictureWidth, int pictureHeight) {
        this.planes = List.copyOf(planes);
        this.found = found;
        this.pictureWidth = pictureWidth;
        this.pictureHeight = pictureHeight;
    }

    /**
     * The scale that a measuring sheet gives.
     *
     * @param sheet what is said of it: whether its line was measured
     * @param focal the camera's focal length as a share of the picture's longer side, where the file tells it
     */
    public static FloorScale of(
            MarkedSheet found, ReferenceSheet sheet, LensModel lens, PixelImage picture, Optional<Double> focal) {
        double pixels = focal.orElse(SheetFinder.USUAL_FOCAL) * Math.max(picture.width, picture.height);
        SheetBend.Floor floor = SheetBend.of(lens, found.marks(), pixels);
        FloorPlane.Turned size = new FloorPlane.Turned(sheet.widthMm(), sheet.heightMm());
        return new FloorScale(
                FloorPlane.variants(floor, sheet, size),
                new SheetFinder.Found(-1, floor.shown().get(0).corners(), size, 0, 0, 0),
                picture);
    }

    /**
     * The scale that plain paper, a card or a mat gives; how far it may be bent is contained.
     *
     * @param focal the camera's focal length as a share of the picture's longer side, where the file tells it
     */
    public static FloorScale of(
            SheetFinder.Found found, ReferenceSheet sheet, LensModel lens, PixelImage picture, Optional<Double> focal) {
        double pixels = focal.orElse(SheetFinder.USUAL_FOCAL) * Math.max(picture.width, picture.height);
        SheetStiffness stiffness = SheetStiffness.of(sheet);
        double seen = Math.hypot(found.deviation(), LEAST_PIXELS);
        double bent = stiffness.cornerPixels(found.skew(), found.shortest());
        List<FloorPlane> planes =
                new ArrayList<>(FloorPlane.variants(lens, found.corners(), sheet, found.size(), seen));
        if (bent > 0) {
            // Only the corners again: lens and size are in the planes before.
            planes.addAll(FloorPlane.variants(lens, found.corners(), sheet, found.size(), bent)
                    .subList(1, SEEN - 1));
        }
        planes.addAll(FloorPlane.lifted(lens, found.corners(), found.size(), pixels, stiffness.liftMm()));
        return new FloorScale(planes, found, picture);
    }

    /**
     * The scale that several sheets of one kind give together.
     *
     * @param each what each of them gives by itself, all through the same lens; the first is the one that places are told by
     * @param focal the camera's focal length as a share of the picture's longer side, where the file tells it
     */
    public static Together together(List<FloorScale> each, ReferenceSheet sheet, Optional<Double> focal) {
        FloorScale first = each.get(0);
        SheetsTogether.Eye eye = first.eye(focal);
        List<LyingSheet> lying = each.stream().map(FloorScale::lying).toList();
        SheetsTogether all = SheetsTogether.of(eye, lying);
        FloorPlane.Turned size = first.found.size();
        List<FloorPlane> planes =
                new ArrayList<>(FloorPlane.variants(new SheetBend.Floor(all.shown(), 0), sheet, size));
        planes.addAll(FloorPlane.of(all.lying(), size));
        SheetFinder.Found found = new SheetFinder.Found(
                -1,
                each.stream().flatMap(one -> one.found.corners().stream()).toList(),
                size,
                0,
                0,
                first.found.deviation());
        double apart = SheetsTogether.compared(eye, lying).stream()
                .filter(other -> !other.isOneSize(Double.MAX_VALUE))
                .mapToDouble(other -> Math.abs(other.larger()))
                .max()
                .orElse(0);
        return new Together(new FloorScale(planes, found, first.pictureWidth, first.pictureHeight), apart);
    }

    /**
     * A scale by several sheets.
     *
     * @param apart by how much, as a share of a length, the sheets contradict each other; zero where chance explains it
     */
    public record Together(FloorScale scale, double apart) {}

    /** How another sheet compares with this one, if this one is right. */
    SheetsTogether.Compared compared(FloorScale other, Optional<Double> focal) {
        return SheetsTogether.compared(eye(focal), List.of(lying(), other.lying()))
                .get(0);
    }

    private LyingSheet lying() {
        return LyingSheet.of(planes, SEEN, SIZES, found.size());
    }

    private SheetsTogether.Eye eye(Optional<Double> focal) {
        LensModel lens = plane().lens();
        double deviation = Math.sqrt(planes.subList(1, SEEN).stream()
                .mapToDouble(plane -> plane.lens().kappa() - lens.kappa())
                .map(off -> off * off)
                .sum());
        double pixels = focal.orElse(SheetFinder.USUAL_FOCAL) * Math.max(pictureWidth, pictureHeight);
        return new SheetsTogether.Eye(lens.with(lens.kappa(), deviation), pixels, focal.isPresent());
    }

    /** Everything this scale is made of, to be stored and made again. */
    public KeptScale kept() {
        return KeptScale.of(planes, found, pictureWidth, pictureHeight);
    }

    /** The scale of the same photograph at {@code times} the size. */
    public FloorScale enlarged(double times) {
        return kept().enlarged(times).scale();
    }

    /** The width of the upright picture that all places refer to, in pixels. */
    public int pictureWidth() {
        return pictureWidth;
    }

    public int pictureHeight() {
        return pictureHeight;
    }

    /** The sheet's corners in the picture; of several sheets those of the one that places are told by. */
    public List<Point> sheetInPicture() {
        return found.corners().subList(0, Math.min(CORNERS, found.corners().size()));
    }

    /** The corners of each sheet that was measured by, in the picture. */
    public List<List<Point>> sheetsInPicture() {
        return IntStream.range(0, found.corners().size() / CORNERS)
                .mapToObj(i -> found.corners().subList(CORNERS * i, CORNERS * (i + 1)))
                .toList();
    }

    /** How far a place on the floor is from the middle of the nearest sheet, in millimetres. */
    public double fromSheet(Point floorPlace) {
        double near = floorPlace.to(sheetMiddle());
        for (List<Point> corners : sheetsInPicture()) {
            Point middle = corners.get(0).towards(corners.get(2), 0.5);
            near = Math.min(near, floorPlace.to(onFloor(middle)));
        }
        return near;
    }

    /** Where a place of the picture lies on the floor, in millimetres. */
    public Point onFloor(Point picturePlace) {
        return plane().floor(picturePlace);
    }

    /** Where a place on the floor shows in the picture, in pixels. */
    public Point inPicture(Point floorPlace) {
        return plane().raw(floorPlace);
    }

    /** The picture's resolution at a place, in pixels to a millimetre. */
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

    /** Measures an outline whose corners the maker has placed, in pixels of the picture. */
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

    /**
     * The deviation in millimetres without the sheet's own tolerance and without what it may stand off the floor, so only from what the picture leaves uncertain.
     */
    public double seenDeviation(Point a, Point b, double ownMm) {
        return deviation(a, b, ownMm, Math.min(planes.size(), SEEN));
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
