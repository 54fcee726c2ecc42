package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.IlluminationCorrection;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.OccupancyMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;


/**
 * Lays each side of a piece where the piece's colours stop and the ground's begin, the side as a whole: of all straight
 * lines within reach, the one that has most cloth inside it and most ground outside. Figures that look like the ground,
 * a joint of the floor and the shade beside a piece weigh little against the rest of a side; threads of a frayed edge
 * cover too little to count as cloth.
 */
public final class EdgeLocaliser {

    /** Where less than this share shows cloth, the cloth has ended: threads cover less, a figured rim more. */
    private static final double SOLID = 0.62;
    /** The same where threads stick out: they lie thick at their root. */
    private static final double FRAYED = 0.7;
    /** A fringe worth speaking of, in pixels. */
    private static final double FRINGE = 1.5;

    /** A side that moved this share of the reach has been where the colours were learnt. */
    private static final double FAR = 0.12;

    private final IlluminationCorrection light;
    private final OccupancyMap occupied;
    private final int reach;

    /** @param reach how far a side may be from where it seems to be, in pixels */
    public EdgeLocaliser(IlluminationCorrection light, OccupancyMap occupied, int reach) {
        this.light = light;
        this.occupied = occupied;
        this.reach = reach;
    }

    /**
     * One side as laid.
     *
     * @param line in straightened pixels
     * @param fringe how far threads reach beyond it, in pixels
     * @param strip what it was laid by
     */
    record Rim(Line line, double fringe, EdgeBand strip) {}

    /** @param moved the farthest that a side has moved, in pixels */
    public record Laid(List<Point> corners, List<Rim> rims, double moved) {

        /** Paper that hardly differs from the ground: its rim is known, and not by colours. */
        public static Laid faint(List<Point> corners) {
            return new Laid(corners, List.of(), 0);
        }

        public boolean isFaint() {
            return rims.isEmpty();
        }

        /** What everything measured by it is doubted for. */
        public Optional<Doubt> doubt(ReferenceSheet sheet) {
            return Optional.of(new Doubt(
                            Doubt.Kind.SHEET,
                            "The " + sheet.name() + " hardly differs from what it lies on, and all sizes hang on it."
                                    + " Look whether its outline in the picture is right, or lay it on darker or more"
                                    + " colourful ground and take the picture again."))
                    .filter(d -> isFaint());
        }
    }

    /** Lays all sides, again from where they came to lie while they move; colours are learnt again when they moved far. */
    public Laid of(List<Point> rough, int own, LensModel lens) {
        PieceColourClassifier telling = PieceColourClassifier.of(light, occupied, rough, own, reach);
        Laid laid = once(rough, telling, lens);
        for (int round = 0; round < 3 && laid.moved() > 1.5; round++) {
            telling = laid.moved() > FAR * reach
                    ? PieceColourClassifier.of(light, occupied, laid.corners(), own, reach)
                    : telling;
            laid = once(laid.corners(), telling, lens);
        }
        return laid;
    }

    private Laid once(List<Point> corners, PieceColourClassifier telling, LensModel lens) {
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<Rim> rims = new ArrayList<>();
        double moved = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = lens.straight(corners.get(i));
            Point b = lens.straight(corners.get((i + 1) % corners.size()));
            EdgeBand strip = new EdgeBand(telling, a, b, outwards, lens, reach);
            double[] ends = strip.best(SOLID);
            moved = Math.max(moved, Math.max(Math.abs(ends[0]), Math.abs(ends[1])));
            Rim rim = strip.rim(ends);
            rims.add(rim.fringe() < FRINGE ? rim : strip.rim(strip.best(FRAYED)));
        }
        List<Line> lines = rims.stream().map(Rim::line).toList();
        return new Laid(FittedPolygon.crossings(corners, lines, lens, 3 * reach), rims, moved);
    }
}
