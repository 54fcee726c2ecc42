package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.PolygonHalving;
import hearthcloth.photo.scale.FloorScale;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;


/**
 * Measures a piece again after the maker has changed its outline, parted it or said how its grain runs. What she put by
 * hand is measured as by hand, and no more surely.
 */
public final class Remeasurement {

    /** As the reader: the usable rectangle is surely inside in 95 of 100 cases, one-sided. */
    private static final double SURE = 1.645;
    /** A corner placed by hand, one standard deviation in pixels of the picture, as {@link FloorScale#byHand} takes it. */
    public static final double PIXELS = 2;

    private static final double LEAST_AREA_MM2 = 100;

    /** Outlines of more corners are no help to anybody. */
    public static final int MOST_CORNERS = 40;

    private final FloorScale scale;

    public Remeasurement(FloorScale scale) {
        this.scale = scale;
    }

    /**
     * The piece with corners where she has put them.
     *
     * @param corners in pixels of the picture, in order round it
     * @param grain direction on the floor in radians that a side of the usable rectangle has to have; empty for any
     * @return empty where that is no outline: fewer than three corners, crossing itself, outside the picture or next to
     *     nothing
     */
    public Optional<ReadPiece> outlined(ReadPiece piece, List<Point> corners, Optional<Double> grain) {
        return outlined(piece, corners, Collections.nCopies(corners.size(), PIXELS), grain);
    }

    /**
     * The same of a piece whose corners were not all placed equally surely.
     *
     * @param pixels how far off each corner may be, one standard deviation in pixels of the picture
     */
    public Optional<ReadPiece> outlined(
            ReadPiece piece, List<Point> corners, List<Double> pixels, Optional<Double> grain) {
        return fault(corners).isPresent()
                ? Optional.empty()
                : Optional.of(measured(piece.number(), piece.look(), piece.doubts(), corners, pixels, grain));
    }

    /** Why an outline drawn by hand is none. */
    public enum Fault {
        TOO_FEW,
        TOO_MANY,
        OUTSIDE,
        CROSSING,
        /** Under 1 cm². */
        SMALL
    }

    /** What is wrong with an outline, its corners in pixels of the picture; empty for a good one. */
    public Optional<Fault> fault(List<Point> corners) {
        if (corners.size() < 3) {
            return Optional.of(Fault.TOO_FEW);
        }
        if (corners.size() > MOST_CORNERS) {
            return Optional.of(Fault.TOO_MANY);
        }
        if (!corners.stream().allMatch(this::isSeen)) {
            return Optional.of(Fault.OUTSIDE);
        }
        if (crossesItself(corners)) {
            return Optional.of(Fault.CROSSING);
        }
        return scale.byHand(corners).areaMm2() < LEAST_AREA_MM2 ? Optional.of(Fault.SMALL) : Optional.empty();
    }

    /**
     * A piece that was not read, by the outline she drew.
     *
     * @param corners in pixels of the picture, without {@link #fault}
     * @param pixels how far off each may be, one standard deviation in pixels
     * @param others what lies on the photograph already, by its name
     */
    public ReadPiece drawn(
            int number, List<Point> corners, List<Double> pixels, PieceAppearance look, Map<String, ReadPiece> others) {
        ReadPiece bare = measured(number, look, List.of(), corners, pixels, Optional.empty());
        boolean rough = pixels.stream().anyMatch(off -> off > PIXELS);
        return new ReadPiece(
                number, bare.outline(), bare.usable(), look, DoubtRules.ofDrawn(bare.outline(), scale, rough, others));
    }

    private ReadPiece measured(
            int number,
            PieceAppearance look,
            List<Doubt> doubts,
            List<Point> corners,
            List<Double> pixels,
            Optional<Double> grain) {
        List<MeasuredLength> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            int next = (i + 1) % corners.size();
            Point a = corners.get(i);
            Point b = corners.get(next);
            double own = Math.hypot(pixels.get(i), pixels.get(next)) / scale.pixelsPerMm(a.towards(b, 0.5));
            sides.add(scale.measured(a, b, own));
        }
        PieceOutline outline = scale.outline(corners, sides);
        double widest = pixels.stream().mapToDouble(Double::doubleValue).max().orElse(PIXELS);
        return new ReadPiece(
                number, outline, usable(outline, widest * Math.sqrt(2) / pixelsPerMm(outline), grain), look, doubts);
    }

    /** The piece as it was read, its usable rectangle along a grain; empty for the largest in any direction. */
    public ReadPiece along(ReadPiece read, Optional<Double> grain) {
        LargestRectangle.Box usable = usable(read.outline(), readMm(read), grain);
        return new ReadPiece(read.number(), read.outline(), usable, read.look(), read.doubts());
    }

    /**
     * The two pieces that a line parts this one in; empty where it does not.
     *
     * @param a a place of the line in the picture
     */
    public Optional<List<ReadPiece>> split(ReadPiece piece, Point a, Point b) {
        if (a.to(b) < 1) {
            return Optional.empty();
        }
        return PolygonHalving.along(piece.outline().floor(), scale.onFloor(a), scale.onFloor(b))
                .map(halves -> halves.stream()
                        .flatMap(half ->
                                outlined(
                                        piece,
                                        half.stream().map(scale::inPicture).toList(),
                                        Optional.empty())
                                        .stream())
                        .toList())
                .filter(pieces -> pieces.size() == 2);
    }

    /** The direction on the floor that a line of the picture has, in radians. */
    public double direction(Point a, Point b) {
        Point from = scale.onFloor(a);
        Point to = scale.onFloor(b);
        return Math.atan2(to.y() - from.y(), to.x() - from.x());
    }

    private LargestRectangle.Box usable(PieceOutline outline, double ownMm, Optional<Double> grain) {
        LargestRectangle.Box box = grain.map(angle -> LargestRectangle.inside(outline.floor(), angle))
                .orElseGet(() -> LargestRectangle.inside(outline.floor()));
        List<Point> c = box.corners().stream().map(scale::inPicture).toList();
        return box.shrunk(
                SURE * scale.seenDeviation(c.get(0), c.get(1), ownMm),
                SURE * scale.seenDeviation(c.get(1), c.get(2), ownMm));
    }

    /**
     * How surely the reader saw the rim, one standard deviation in millimetres: read back from what it took off the
     * largest rectangle, since that is kept and the picture's own pixels are not at hand.
     */
    private double readMm(ReadPiece read) {
        LargestRectangle.Box whole =
                LargestRectangle.inside(read.outline().floor(), read.usable().angleRad());
        List<Point> c = whole.corners().stream().map(scale::inPicture).toList();
        double least = 0.3 / pixelsPerMm(read.outline());
        double byWidth = own(whole.width() - read.usable().width(), scale.seenDeviation(c.get(0), c.get(1), 0));
        double byHeight = own(whole.height() - read.usable().height(), scale.seenDeviation(c.get(1), c.get(2), 0));
        return Math.max(least, Math.max(byWidth, byHeight));
    }

    private static double own(double taken, double seen) {
        return Math.sqrt(Math.max(0, Math.pow(taken / SURE, 2) - seen * seen));
    }

    private double pixelsPerMm(PieceOutline outline) {
        return scale.pixelsPerMm(outline.picture().get(0));
    }

    /** In the picture or a little outside, where the reader lets a side run on. */
    private boolean isSeen(Point spot) {
        double margin = 0.05 * Math.max(scale.pictureWidth(), scale.pictureHeight());
        return spot.x() >= -margin
                && spot.y() >= -margin
                && spot.x() <= scale.pictureWidth() + margin
                && spot.y() <= scale.pictureHeight() + margin;
    }

    private static boolean crossesItself(List<Point> corners) {
        List<Line2D> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            sides.add(new Line2D.Double(a.x(), a.y(), b.x(), b.y()));
        }
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 2; j < sides.size(); j++) {
                boolean neighbours = i == 0 && j == sides.size() - 1;
                if (!neighbours && sides.get(i).intersectsLine(sides.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }
}
