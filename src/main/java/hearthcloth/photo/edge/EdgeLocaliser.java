package hearthcloth.photo.edge;

import hearthcloth.geometry.Line;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.IlluminationCorrection;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.OccupancyMap;
import hearthcloth.words.sentence.PhotographingSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Places each side of a piece where the piece's colours stop and the ground's begin. The side is placed as a whole: of
 * all straight lines within reach, the one with most cloth inside it and most ground outside. Figures that look like
 * the ground, a joint of the floor and the shade beside a piece weigh little against the rest of a side; the threads of
 * a frayed edge cover too little to count as cloth.
 */
public final class EdgeLocaliser {

    private final IlluminationCorrection light;
    private final OccupancyMap occupied;
    private final int reach;
    private final EdgeParameters parameters;

    /**
     * Prepares the search.
     *
     * @param reach how far a side may be from its first place, in pixels
     */
    public EdgeLocaliser(IlluminationCorrection light, OccupancyMap occupied, int reach, EdgeParameters parameters) {
        this.light = light;
        this.occupied = occupied;
        this.reach = reach;
        this.parameters = parameters;
    }

    /**
     * One side in its new place.
     *
     * @param line in straightened pixels
     * @param fringe how far threads reach beyond it, in pixels
     * @param soft how far its colour fades out beyond it, by threads, shade or a soft lens, in pixels
     * @param strip the levels of cloth by which it was placed
     */
    record Rim(Line line, double fringe, double soft, EdgeBand strip) {

        /** The share of the side on which its colours alone tell cloth from ground, from 0 to 1. */
        double clear() {
            return strip.clear();
        }
    }

    /**
     * All sides in their new places.
     *
     * @param moved the farthest that a side has moved, in pixels
     * @param isFaint whether it hardly differs from the ground
     */
    public record Laid(List<Point> corners, List<Rim> rims, double moved, boolean isFaint) {

        /** Paper that hardly differs from the ground: its outline is known, and not from colours. */
        public static Laid faint(List<Point> corners) {
            return new Laid(corners, List.of(), 0, true);
        }

        /** A sheet whose outline is told by its whiteness or by her taps. */
        public static Laid told(List<Point> corners) {
            return new Laid(corners, List.of(), 0, false);
        }

        /** Whether its outline is known without its colours. */
        public boolean isKnown() {
            return rims.isEmpty();
        }

        /** The doubt about everything that is measured by this sheet; empty unless it is faint. */
        public Optional<Doubt> doubt(ReferenceSheet sheet) {
            return Optional.of(new Doubt(Doubt.Kind.SHEET, PhotographingSentences.doubtSheetFaint(sheet.said())))
                    .filter(d -> isFaint());
        }
    }

    /**
     * Places all sides, again from where they came to lie as long as they move; the colours are learnt again when they
     * moved far.
     */
    public Laid of(List<Point> rough, int own, LensModel lens) {
        PieceColourClassifier telling =
                PieceColourClassifier.of(light, occupied, rough, own, reach, parameters.colours());
        Laid laid = once(rough, telling, lens);
        for (int round = 0; round < 3 && laid.moved() > 1.5; round++) {
            telling = laid.moved() > parameters.placing().far() * reach
                    ? PieceColourClassifier.of(light, occupied, laid.corners(), own, reach, parameters.colours())
                    : telling;
            laid = once(laid.corners(), telling, lens);
        }
        List<Point> whole =
                new BluntCorners(telling, reach, parameters.placing().blunt()).sharpened(laid.corners());
        return whole.size() == laid.corners().size() ? laid : once(whole, telling, lens);
    }

    private Laid once(List<Point> corners, PieceColourClassifier telling, LensModel lens) {
        int outwards = Polygons.signedArea(corners) > 0 ? -1 : 1;
        List<Rim> rims = new ArrayList<>();
        double moved = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = lens.straight(corners.get(i));
            Point b = lens.straight(corners.get((i + 1) % corners.size()));
            EdgeBand strip = new EdgeBand(telling, a, b, outwards, lens, reach, parameters);
            double[] ends = strip.best(parameters.placing().solid());
            moved = Math.max(moved, Math.max(Math.abs(ends[0]), Math.abs(ends[1])));
            Rim rim = strip.rim(ends);
            rims.add(
                    rim.fringe() < parameters.placing().fringe()
                            ? rim
                            : strip.rim(strip.best(parameters.placing().frayed())));
        }
        List<Line> lines = rims.stream().map(Rim::line).toList();
        return new Laid(FittedPolygon.crossings(corners, lines, lens, 3 * reach), rims, moved, false);
    }
}
