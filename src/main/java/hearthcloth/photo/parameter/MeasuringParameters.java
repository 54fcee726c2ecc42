package hearthcloth.photo.parameter;

import java.util.List;

/**
 * How shapes become polygons, measured pieces and doubts. "Tuned" means set by trial on the drawers of drawn
 * photographs, as docs/reading.md tells them.
 *
 * @param tracing with how many corners a shape is drawn
 * @param tapped what shows round a place that was tapped
 * @param sides what is a piece, and how surely its sides are known
 * @param doubts when a piece is doubted
 * @param vague when its measures are
 */
public record MeasuringParameters(Tracing tracing, Tapped tapped, Sides sides, Doubts doubts, Vague vague) {

    /** The values that the reader works with. */
    public static MeasuringParameters standard() {
        return new MeasuringParameters(
                Tracing.standard(), Tapped.standard(), Sides.standard(), Doubts.standard(), Vague.standard());
    }

    /**
     * With how many corners a shape is drawn.
     *
     * @param tolerances how far a rim may be off its polygon, in coarse pixels; each is tried
     * @param cornerCost what each corner adds to a polygon's misfit, which is a share of its rim; tuned
     * @param emptyCorner what a corner without cloth in it adds; tuned
     * @param emptyArea so much is missing there, in square coarse pixels: twice what the opening of the mask
     *     takes from a sharp corner
     * @param rounded three times the share of its area that a card lacks at a corner, (1 − π/4) r² of ID-1's
     *     sides (docs/sources.md#card)
     * @param stray a rim farther from a polygon follows none of its sides, as in the notch of an L, in coarse
     *     pixels; tuned
     */
    public record Tracing(
            List<Double> tolerances,
            double cornerCost,
            double emptyCorner,
            double emptyArea,
            double rounded,
            double stray) {
        public Tracing {
            tolerances = List.copyOf(tolerances);
        }

        private static Tracing standard() {
            return new Tracing(List.of(2.2, 3.5, 6.0, 9.0, 13.0), 0.02, 0.1, 20, 0.0015, 4);
        }
    }

    /**
     * What shows round a place that was tapped, such as a piece that the reader missed.
     *
     * @param likes differences of colour that are tried, in CIELAB units
     * @param tolerances how far a rim may be off its polygon, in coarse pixels; each is tried
     * @param mostMisfit a polygon of whose rim more than this share shows nowhere is no piece; tuned
     * @param mostCorners a piece with more corners is not told by its rim; she draws it
     */
    public record Tapped(List<Double> likes, List<Double> tolerances, double mostMisfit, int mostCorners) {
        public Tapped {
            likes = List.copyOf(likes);
            tolerances = List.copyOf(tolerances);
        }

        private static Tapped standard() {
            return new Tapped(List.of(4.0, 6.0, 8.0, 11.0, 15.0, 20.0, 26.0), List.of(2.2, 4.0, 7.0), 0.45, 12);
        }
    }

    /**
     * What is a piece, and how surely its sides are known.
     *
     * @param leastAreaMm2 smaller shapes are lint, in square millimetres: 15 by 20 mm; tuned
     * @param leastWidthMm thinner ones are threads, in millimetres; tuned
     * @param common the share of the scatter of a side's places that may be common to all of them; tuned
     * @param figured a figure may hide where a side is, so its deviation is multiplied by this; tuned
     * @param soft the further deviation of a figured piece's side for all that it lacks in sharpness, in pixels; tuned
     * @param unseen the further deviation of a side that was not seen at all, in pixels; tuned
     */
    public record Sides(
            double leastAreaMm2, double leastWidthMm, double common, double figured, double soft, double unseen) {
        private static Sides standard() {
            return new Sides(300, 9, 1, 1.2, 1.5, 2);
        }
    }

    /**
     * When a piece is doubted.
     *
     * @param faintContrast a smaller mean difference from the ground may hide edges, in CIELAB units; tuned
     * @param sureShare unless so much of each side was seen; tuned
     * @param sureScatter and its places scatter by no more pixels; tuned
     * @param faintShare a side of which less was seen is faint; tuned
     * @param hidden a figured cloth of which one colour differs by less from the ground, in CIELAB units, hides where it ends
     * @param restless where places of a side scatter by more, in pixels
     * @param far places farther from the sheet are far, in diagonals of the sheet; tuned
     * @param fringeMm a longer fringe of threads is reported, in millimetres; tuned
     * @param twoCloths when its colours are probably two pieces'
     * @param mostCorners an outline with more corners is called uneven; tuned
     */
    public record Doubts(
            double faintContrast,
            double sureShare,
            double sureScatter,
            double faintShare,
            double hidden,
            double restless,
            double far,
            double fringeMm,
            TwoCloths twoCloths,
            int mostCorners) {
        private static Doubts standard() {
            return new Doubts(12, 0.6, 0.6, 0.3, 9, 0.4, 3, 0.8, new TwoCloths(10, 2.2, 0.97), 9);
        }
    }

    /**
     * When the measures of a piece are too unsure to cut by.
     *
     * @param share a give or take, by how its ends were seen, of more than this share of a side; tuned
     * @param mm and of more millimetres; tuned
     * @param farShare a give or take, with all that the sheet leaves open, of more than this share: such a piece lies too far
     *     from the sheet
     * @param farMm and of more millimetres
     * @param edgeShare a corner nearer to the picture's edge, as a share of its longer side, may be where the
     *     picture ends; tuned
     */
    public record Vague(double share, double mm, double farShare, double farMm, double edgeShare) {
        private static Vague standard() {
            return new Vague(0.025, 2.5, 0.06, 6, 0.002);
        }
    }

    /**
     * When the colours of a piece are probably two pieces'.
     *
     * @param apart they are farther apart, in CIELAB units; tuned
     * @param border and in connected areas: their border is below this, where a straight line between two halves
     *     has about one; tuned
     * @param compact and the shape fills less than this share of its convex hull; tuned
     */
    public record TwoCloths(double apart, double border, double compact) {}
}
