package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.parameter.MeasuringParameters;
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
 * Measures a piece again after the maker has changed its outline, split it or marked its grain. What she placed by hand
 * is measured with the uncertainty of a hand.
 */
public final class Remeasurement {

    /**
     * Standard deviations taken off the usable rectangle, as the reader does: it then lies inside in 95 of 100 cases,
     * one-sided.
     */
    private static final double SURE = 1.645;
    /** The deviation of a corner placed by hand, in pixels of the picture, as {@link FloorScale#byHand} takes it. */
    public static final double PIXELS = 2;

    /** Smaller outlines are a slip of the hand, in square millimetres. */
    private static final double LEAST_AREA_MM2 = 100;

    /** The most corners that an outline may have. */
    public static final int MOST_CORNERS = 40;

    private final FloorScale scale;

    public Remeasurement(FloorScale scale) {
        this.scale = scale;
    }

    /**
     * The piece with its corners where she has put them.
     *
     * @param corners in pixels of the picture, in order round it
     * @param grain direction on the floor, in radians, that a side of the usable rectangle must have; empty for any
     * @return empty where that is no outline: fewer than three corners, crossing itself, outside the picture or almost
     *     without area
     */
    public Optional<ReadPiece> outlined(ReadPiece piece, List<Point> corners, Optional<Double> grain) {
        return outlined(piece, corners, Collections.nCopies(corners.size(), PIXELS), grain);
    }

    /**
     * The same for a piece whose corners were not all placed equally surely.
     *
     * @param pixels deviation of each corner, in pixels of the picture
     */
    public Optional<ReadPiece> outlined(
            ReadPiece piece, List<Point> corners, List<Double> pixels, Optional<Double> grain) {
        return fault(corners).isPresent()
                ? Optional.empty()
                : Optional.of(measured(piece.number(), piece.look(), piece.doubts(), corners, pixels, grain));
    }

    /** Why an outline drawn by hand cannot be used. */
    public enum Fault {
        TOO_FEW,
        TOO_MANY,
        OUTSIDE,
        CROSSING,
        /** Smaller than 1 cm². */
        SMALL
    }

    /** What is wrong with an outline whose corners are given in pixels of the picture; empty for a good one. */
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
     * A piece that was not read, from the outline she drew.
     *
     * @param corners in pixels of the picture, without a {@link #fault}
     * @param pixels deviation of each corner, in pixels
     * @param others the pieces already on the photograph, by name
     */
    public ReadPiece drawn(
            int number, List<Point> corners, List<Double> pixels, PieceAppearance look, Map<String, ReadPiece> others) {
        ReadPiece bare = measured(number, look, List.of(), corners, pixels, Optional.empty());
        boolean rough = pixels.stream().anyMatch(off -> off > PIXELS);
        return new ReadPiece(
                number,
                bare.outline(),
                bare.usable(),
                look,
                DoubtRules.ofDrawn(bare.outline(), scale, rough, others, MeasuringParameters.standard()));
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

    /**
     * The piece as it was read, with its usable rectangle along a grain; with the largest in any direction where the
     * grain is empty.
     */
    public ReadPiece along(ReadPiece read, Optional<Double> grain) {
        LargestRectangle.Box usable = usable(read.outline(), readMm(read), grain);
        return new ReadPiece(read.number(), read.outline(), usable, read.look(), read.doubts());
    }

    /**
     * The two pieces into which a line divides this one; empty where it does not divide it.
     *
     * @param a a place on the line, in the picture
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

    /** The direction on the floor of a line of the picture, in radians. */
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
     * The deviation with which the reader found the rim, in millimetres. It is worked back from what the reader took
     * off the largest rectangle, since that is stored and the picture's pixels are not at hand.
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

    /** Whether a place lies in the picture or a little outside it, where the reader lets a side continue. */
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
