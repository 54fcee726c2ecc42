package hearthcloth.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Turns traced shapes into measured pieces. */
final class Pieces {

    /** Smaller shapes are lint, in square millimetres; and thinner ones threads, in millimetres. */
    private static final double LEAST_AREA_MM2 = 300;

    private static final double LEAST_WIDTH_MM = 9;
    /** The usable rectangle is surely inside in 95 of 100 cases: one-sided. */
    private static final double SURE = 1.645;
    /** Of the scatter of a side's places so much may be the side's own: soft edges and short threads, in deviations. */
    private static final double SCATTER = 0.8;
    /** A figure may hide where a side is: its deviation is taken this much larger, */
    private static final double FIGURED = 1.9;
    /** and where little of the side was seen, larger still, in pixels for a side not seen at all. */
    private static final double UNSEEN = 6;

    private final Coarse coarse;
    private final Ground ground;
    private final Scale scale;
    private final Sheet sheet;

    Pieces(Coarse coarse, Ground ground, Scale scale, Sheet sheet) {
        this.coarse = coarse;
        this.ground = ground;
        this.scale = scale;
        this.sheet = sheet;
    }

    /** All shapes but the sheet, numbered in reading order. */
    List<Piece> of(List<Blob> blobs, List<Traced> traced, int sheetIndex) {
        Interior paper = Interior.of(traced.get(sheetIndex).corners(), coarse, ground);
        Daylight light = new Daylight(sheet.white() ? paper.colour() : Daylight.PAPER, paper.ground());
        List<Piece> pieces = IntStream.range(0, blobs.size())
                .parallel()
                .filter(i -> i != sheetIndex)
                .mapToObj(i -> piece(blobs.get(i), traced.get(i), light))
                .filter(Pieces::isCloth)
                .sorted(Comparator.comparingDouble(Pieces::row).thenComparingDouble(p -> top(p).x()))
                .toList();
        List<Piece> numbered = new ArrayList<>();
        for (Piece piece : pieces) {
            numbered.add(new Piece(numbered.size() + 1, piece.outline(), piece.usable(), piece.look(), piece.doubts()));
        }
        return List.copyOf(numbered);
    }

    private static Spot top(Piece piece) {
        return piece.outline().picture().stream()
                .min(Comparator.comparingDouble(Spot::y))
                .orElseThrow();
    }

    /** Rows of about a hand's height, so that reading order goes left to right. */
    private static double row(Piece piece) {
        return Math.floor(top(piece).y() / 400);
    }

    private static boolean isCloth(Piece piece) {
        double area = piece.outline().areaMm2();
        return area >= LEAST_AREA_MM2
                && 2 * area / Shapes.perimeter(piece.outline().floor()) >= LEAST_WIDTH_MM;
    }

    private Piece piece(Blob blob, Traced traced, Daylight light) {
        Interior interior = Interior.of(traced.corners(), coarse, ground);
        double doubtful = interior.figured() ? FIGURED : 1;
        List<Spot> corners = traced.corners();
        List<Measured> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(scale.measured(
                    corners.get(i), corners.get((i + 1) % corners.size()), doubtful * endsMm(traced, i)));
        }
        Outline outline = scale.outline(corners, sides);
        return new Piece(
                0,
                outline,
                usable(traced),
                Look.of(interior, light),
                Doubts.of(blob, traced, outline, interior, scale));
    }

    /** Deviation of side i's length from how well the sides it ends at were seen. */
    private double endsMm(Traced traced, int i) {
        int n = traced.corners().size();
        return Math.hypot(endMm(traced, i, Math.floorMod(i - 1, n), i), endMm(traced, i, (i + 1) % n, (i + 1) % n));
    }

    private double endMm(Traced traced, int own, int other, int corner) {
        double sine = traced.sine(corner);
        double cosine = Math.sqrt(1 - Math.min(1, sine * sine));
        double across = Math.hypot(
                deviation(traced.fits().get(other)), deviation(traced.fits().get(own)) * cosine);
        return across / sine / scale.pixelsPerMm(traced.corners().get(corner));
    }

    /** A line's deviation at its end, which is half as large again as in its middle. */
    private static double deviation(Side.Fit fit) {
        return 1.5 * fit.deviation() + UNSEEN * Math.max(0, 0.6 - fit.share());
    }

    /** The largest rectangle inside the sides' wavers, each side shorter by what the picture leaves open. */
    private LargestRectangle.Box usable(Traced traced) {
        List<Spot> firm = traced.firm(scale.plane().lens());
        LargestRectangle.Box box =
                LargestRectangle.inside(firm.stream().map(scale::onFloor).toList());
        List<Spot> c = box.corners().stream().map(scale::inPicture).toList();
        double own = Math.sqrt(2)
                * traced.fits().stream()
                        .mapToDouble(fit -> Math.hypot(fit.deviation(), SCATTER * fit.scatter()))
                        .average()
                        .orElse(1)
                / scale.pixelsPerMm(c.get(0));
        return box.shrunk(
                SURE * scale.seenDeviation(c.get(0), c.get(1), own),
                SURE * scale.seenDeviation(c.get(1), c.get(2), own));
    }
}
