package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.parameter.ReadingParameters;
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
import java.util.Set;
import java.util.stream.IntStream;

/** Turns traced shapes into measured pieces. */
final class PieceMeasurement {

    /**
     * Deviations taken off the usable rectangle for the uncertainty of the floor's plane, so that it is right in 95 of
     * 100 cases, one-sided.
     */
    private static final double SURE = 1.645;

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final FloorScale scale;
    private final ReferenceSheet sheet;
    private final ReadingParameters parameters;

    PieceMeasurement(
            LabThumbnail coarse,
            GroundModel ground,
            FloorScale scale,
            ReferenceSheet sheet,
            ReadingParameters parameters) {
        this.coarse = coarse;
        this.ground = ground;
        this.scale = scale;
        this.sheet = sheet;
        this.parameters = parameters;
    }

    /**
     * All shapes but the sheets, numbered in reading order.
     *
     * @param sheets which of the shapes are sheets, the surest first
     */
    List<ReadPiece> of(List<Blob> blobs, List<FittedPolygon> traced, List<Integer> sheets) {
        FittedPolygon own = traced.get(sheets.get(0));
        return beside(own.corners(), own.sharpness(), blobs, traced, sheets);
    }

    /**
     * All shapes, where the sheet is none of them.
     *
     * @param paper a part of the sheet that is blank, in raw pixels
     * @param sharpest sharpness of the sheet's own edges
     */
    List<ReadPiece> beside(List<Point> paper, double sharpest, List<Blob> blobs, List<FittedPolygon> traced) {
        return beside(paper, sharpest, blobs, traced, List.of());
    }

    private List<ReadPiece> beside(
            List<Point> blank, double sharpest, List<Blob> blobs, List<FittedPolygon> traced, List<Integer> sheets) {
        InteriorColour paper = InteriorColour.of(blank, coarse, ground);
        WhiteBalance light = new WhiteBalance(sheet.white() ? paper.colour() : WhiteBalance.PAPER, paper.ground());
        Set<Integer> floor = GroundShapes.among(blobs, traced, coarse, parameters);
        List<ReadPiece> pieces = IntStream.range(0, blobs.size())
                .parallel()
                .filter(i -> !sheets.contains(i) && !floor.contains(i))
                .mapToObj(i -> piece(blobs.get(i), traced.get(i), light, sharpest))
                .filter(this::isCloth)
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

    private boolean isCloth(ReadPiece piece) {
        double area = piece.outline().areaMm2();
        return area >= parameters.measuring().sides().leastAreaMm2()
                && 2 * area / Polygons.perimeter(piece.outline().floor())
                        >= parameters.measuring().sides().leastWidthMm();
    }

    private ReadPiece piece(Blob blob, FittedPolygon traced, WhiteBalance light, double sharpest) {
        InteriorColour interior = InteriorColour.of(traced.corners(), coarse, ground);
        double doubtful = interior.figured() ? parameters.measuring().sides().figured() : 1;
        double soft = interior.figured() ? parameters.measuring().sides().soft() : 0;
        List<Point> corners = traced.corners();
        List<MeasuredLength> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(scale.measured(
                    corners.get(i),
                    corners.get((i + 1) % corners.size()),
                    doubtful * new Ends(traced, sharpest, soft).mm(i)));
        }
        PieceOutline outline = scale.outline(corners, sides);
        return new ReadPiece(
                0,
                outline,
                usable(traced, sharpest),
                PieceAppearance.of(interior, light),
                DoubtRules.of(blob, traced, outline, interior, scale, parameters.measuring()));
    }

    /** How surely the ends of a shape's sides are known. */
    private final class Ends {

        private final FittedPolygon traced;
        private final double sharpest;

        /** The further deviation of a side for all that it is less sharp than the sheet's own, in pixels. */
        private final double soft;

        Ends(FittedPolygon traced, double sharpest, double soft) {
            this.traced = traced;
            this.sharpest = sharpest;
            this.soft = soft;
        }

        /** The deviation of side i's length, in millimetres, from how well the sides at its two ends were seen. */
        double mm(int i) {
            int n = traced.corners().size();
            return Math.hypot(mm(i, Math.floorMod(i - 1, n), i), mm(i, (i + 1) % n, (i + 1) % n));
        }

        private double mm(int own, int other, int corner) {
            double sine = traced.sine(corner);
            double cosine = Math.sqrt(1 - Math.min(1, sine * sine));
            double across = Math.hypot(deviation(other), deviation(own) * cosine);
            return across / sine / scale.pixelsPerMm(traced.corners().get(corner));
        }

        /** A line's deviation at its end, in pixels; how much its places scatter tells best how far off it may be as a whole. */
        private double deviation(int i) {
            EdgeFit.Fit fit = traced.fits().get(i);
            double softer = soft * Math.max(0, sharpest - traced.sides().get(i).sharpness());
            double common = parameters.measuring().sides().common() * fit.scatter();
            return Math.hypot(Math.hypot(fit.deviation(), common), softer)
                    + parameters.measuring().sides().unseen() * Math.max(0, 0.6 - fit.share());
        }
    }

    /**
     * The largest rectangle that is surely cloth, each of its sides shortened by the uncertainty of the floor's plane.
     */
    private LargestRectangle.Box usable(FittedPolygon traced, double sharpest) {
        List<Double> insets =
                traced.insets(sharpest, parameters.edge().following().unsharp());
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
