package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.InteriorColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Turns traced shapes into measured pieces. */
final class PieceMeasurement {

    /**
     * Shapes smaller than this are lint, in square millimetres; shapes thinner than {@link #LEAST_WIDTH_MM} millimetres
     * are threads.
     */
    private static final double LEAST_AREA_MM2 = 300;

    private static final double LEAST_WIDTH_MM = 9;
    /**
     * Deviations taken off the usable rectangle for the uncertainty of the floor's plane, so that it is right in 95 of
     * 100 cases, one-sided.
     */
    private static final double SURE = 1.645;
    /** The share of the scatter of a side's places that may be common to all of them because of threads or shade. */
    private static final double COMMON = 0.4;
    /** A figure may hide where a side is, so its deviation is multiplied by this. */
    private static final double FIGURED = 1.9;
    /**
     * The further deviation, in pixels, of a side that was not seen at all; a side of which little was seen has a part
     * of it.
     */
    private static final double UNSEEN = 6;

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final FloorScale scale;
    private final ReferenceSheet sheet;

    PieceMeasurement(LabThumbnail coarse, GroundModel ground, FloorScale scale, ReferenceSheet sheet) {
        this.coarse = coarse;
        this.ground = ground;
        this.scale = scale;
        this.sheet = sheet;
    }

    /** All shapes but the sheet, numbered in reading order. */
    List<ReadPiece> of(List<Blob> blobs, List<FittedPolygon> traced, int sheetIndex) {
        FittedPolygon own = traced.get(sheetIndex);
        return beside(own.corners(), own.sharpness(), blobs, traced, sheetIndex);
    }

    /**
     * All shapes, where the sheet is none of them.
     *
     * @param paper a part of the sheet that is blank, in raw pixels
     * @param sharpest sharpness of the sheet's own edges
     */
    List<ReadPiece> beside(List<Point> paper, double sharpest, List<Blob> blobs, List<FittedPolygon> traced) {
        return beside(paper, sharpest, blobs, traced, -1);
    }

    private List<ReadPiece> beside(
            List<Point> blank, double sharpest, List<Blob> blobs, List<FittedPolygon> traced, int sheetIndex) {
        InteriorColour paper = InteriorColour.of(blank, coarse, ground);
        WhiteBalance light = new WhiteBalance(sheet.white() ? paper.colour() : WhiteBalance.PAPER, paper.ground());
        List<ReadPiece> pieces = IntStream.range(0, blobs.size())
                .parallel()
                .filter(i -> i != sheetIndex)
                .mapToObj(i -> piece(blobs.get(i), traced.get(i), light, sharpest))
                .filter(PieceMeasurement::isCloth)
                .sorted(Comparator.comparingDouble(PieceMeasurement::row).thenComparingDouble(p -> top(p).x()))
                .toList();
        List<ReadPiece> numbered = new ArrayList<>();
        for (ReadPiece piece : pieces) {
            numbered.add(
                    new ReadPiece(numbered.size() + 1, piece.outline(), piece.usable(), piece.look(), piece.doubts()));
        }
        return List.copyOf(numbered);
    }

    private static Point top(ReadPiece piece) {
        return piece.outline().picture().stream()
                .min(Comparator.comparingDouble(Point::y))
                .orElseThrow();
    }

    /**
     * The row that a piece's top lies in, 400 raw pixels high, so that reading order goes from left to right in each.
     */
    private static double row(ReadPiece piece) {
        return Math.floor(top(piece).y() / 400);
    }

    private static boolean isCloth(ReadPiece piece) {
        double area = piece.outline().areaMm2();
        return area >= LEAST_AREA_MM2
                && 2 * area / Polygons.perimeter(piece.outline().floor()) >= LEAST_WIDTH_MM;
    }

    private ReadPiece piece(Blob blob, FittedPolygon traced, WhiteBalance light, double sharpest) {
        InteriorColour interior = InteriorColour.of(traced.corners(), coarse, ground);
        double doubtful = interior.figured() ? FIGURED : 1;
        List<Point> corners = traced.corners();
        List<MeasuredLength> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(scale.measured(
                    corners.get(i), corners.get((i + 1) % corners.size()), doubtful * endsMm(traced, i)));
        }
        PieceOutline outline = scale.outline(corners, sides);
        return new ReadPiece(
                0,
                outline,
                usable(traced, sharpest),
                PieceAppearance.of(interior, light),
                DoubtRules.of(blob, traced, outline, interior, scale));
    }

    /** The deviation of side i's length, in millimetres, from how well the sides at its two ends were seen. */
    private double endsMm(FittedPolygon traced, int i) {
        int n = traced.corners().size();
        return Math.hypot(endMm(traced, i, Math.floorMod(i - 1, n), i), endMm(traced, i, (i + 1) % n, (i + 1) % n));
    }

    private double endMm(FittedPolygon traced, int own, int other, int corner) {
        double sine = traced.sine(corner);
        double cosine = Math.sqrt(1 - Math.min(1, sine * sine));
        double across = Math.hypot(
                deviation(traced.fits().get(other)), deviation(traced.fits().get(own)) * cosine);
        return across / sine / scale.pixelsPerMm(traced.corners().get(corner));
    }

    /** A line's deviation at its end, in pixels, which is half as large again as in its middle. */
    private static double deviation(EdgeFit.Fit fit) {
        return 1.5 * Math.hypot(fit.deviation(), COMMON * fit.scatter()) + UNSEEN * Math.max(0, 0.6 - fit.share());
    }

    /**
     * The largest rectangle that is surely cloth, each of its sides shortened by the uncertainty of the floor's plane.
     */
    private LargestRectangle.Box usable(FittedPolygon traced, double sharpest) {
        List<Double> insets = traced.insets(sharpest);
        LargestRectangle.Box box =
                LargestRectangle.inside(traced.inset(insets, scale.plane().lens()).stream()
                        .map(scale::onFloor)
                        .toList());
        List<Point> c = box.corners().stream().map(scale::inPicture).toList();
        double taken =
                2 * insets.stream().mapToDouble(Double::doubleValue).average().orElse(0) / scale.pixelsPerMm(c.get(0));
        return box.shrunk(further(taken, c.get(0), c.get(1)), further(taken, c.get(1), c.get(2)));
    }

    /**
     * What has to be taken off a length in addition to {@code takenMm}; the two errors are independent, so their
     * squares add.
     */
    private double further(double takenMm, Point a, Point b) {
        return SURE * scale.seenDeviation(a, b, takenMm / SURE) - takenMm;
    }
}
