package hearthcloth.photo.parameter;

import java.util.List;

/**
 * How the reader places the sides of a piece. "Tuned" means set by trial on the drawers of drawn photographs, as
 * docs/reading.md tells them.
 *
 * @param colours how a piece's colours are learnt
 * @param placing where cloth ends by its colours
 * @param band what is read along a side
 * @param steps where the picture has its sharp step
 * @param following which of the two holds
 * @param shaded where cloth of even colour ends beside a shade
 * @param lens how the lens is told from bent cloth
 */
public record EdgeParameters(
        Colours colours, Placing placing, Band band, Steps steps, Following following, Shaded shaded, Lens lens) {

    /** The values that the reader works with. */
    public static EdgeParameters standard() {
        return new EdgeParameters(
                Colours.standard(),
                Placing.standard(),
                Band.standard(),
                Steps.standard(),
                Following.standard(),
                Shaded.standard(),
                Lens.standard());
    }

    /**
     * How the colours of a piece and of the ground beside it are learnt.
     *
     * @param shades the depths of shade, as the share of light that is left; tuned
     * @param inShade the share of the ground's places that may lie in shade of each depth; tuned
     * @param unseen the frequency of colours that were seen nowhere, so that they say nothing either way; tuned
     * @param enough the fewest places well inside a piece from which its colours are learnt; tuned
     * @param most about so many places are read; tuned
     */
    public record Colours(List<Double> shades, float inShade, double unseen, int enough, int most) {
        public Colours {
            shades = List.copyOf(shades);
        }

        private static Colours standard() {
            return new Colours(List.of(0.92, 0.84, 0.76, 0.68, 0.6), 0.12f, 4e-6, 150, 5000);
        }
    }

    /**
     * Where cloth ends by its colours.
     *
     * @param solid where less than this share looks like cloth it has ended: threads cover less, a figured rim
     *     more; tuned
     * @param frayed the same for a side with threads sticking out, since they are dense at their roots; tuned
     * @param fringe a shorter fringe is not counted as one, in pixels; tuned
     * @param far a side that moved by more than this share of the reach has its colours learnt again; tuned
     * @param blunt which short sides are a corner cut off by shade and blur
     * @param threads what tells threads from shade
     */
    public record Placing(double solid, double frayed, double fringe, double far, Blunt blunt, Threads threads) {
        private static Placing standard() {
            return new Placing(0.62, 0.7, 1.5, 0.12, new Blunt(1.5, 2.5, 0.5), new Threads(1.6, 6, 2, 0.16));
        }
    }

    /**
     * What is read along a side.
     *
     * @param clip no place says more than this for or against a line, in levels of cloth; tuned
     * @param mostPlaces the most places read along a side; tuned
     * @param leastPlaces the fewest; tuned
     * @param threads threads reach as far out as the mean level of cloth stays above this; tuned
     * @param soft the picture's own softness covers this much beyond a line, in pixels; tuned
     * @param beside so many pixels on each side of a line are looked at for cloth and ground; tuned
     */
    public record Band(double clip, int mostPlaces, double leastPlaces, double threads, double soft, int beside) {
        private static Band standard() {
            return new Band(0.4, 160, 8, 0.1, 1.2, 4);
        }
    }

    /**
     * Where the picture has its sharp step across a side.
     *
     * @param leastChange a profile that changes by less is not used, in steps of 255; tuned
     * @param window the distance within which a step's fall is weighed, in pixels; tuned
     * @param centrings how often that is repeated from where it was found; tuned
     * @param settled the step is found when it moves by less, in pixels; tuned
     * @param toned an edge is moved by this share of the way to where the light has its step, since cameras
     *     sharpen and bend their tones. No source: of three kinds of drawn pictures one has its edges nearer 0 and
     *     two nearer 1
     * @param lit the light is examined at one place in so many, since blur is much the same all along a side
     */
    public record Steps(double leastChange, double window, int centrings, double settled, double toned, int lit) {
        private static Steps standard() {
            return new Steps(9, 3, 4, 0.005, 0.5, 5);
        }
    }

    /**
     * Whether a side is where the picture has its sharp step or where its colours end.
     *
     * @param near how far a place may be off its side and still belong to it, in pixels; tuned
     * @param leastShare a side of which less was seen stays where its colours placed it; tuned
     * @param mostOff a sharp edge farther off belongs to something else, in pixels; tuned
     * @param frayedOff the same for a frayed side, whose threads end sharply too; tuned
     * @param mostLoss a sharp edge that is worse by so many pixels of cloth or ground is a figure's; tuned
     * @param unsharp what is taken of sides that are not sharp
     */
    public record Following(
            double near, double leastShare, double mostOff, double frayedOff, double mostLoss, Unsharp unsharp) {
        private static Following standard() {
            return new Following(1.2, 0.3, 2.5, 1.2, 2.2, new Unsharp(0.45, 0.7, 0.9, 2.4, 2.3, 0.8));
        }
    }

    /**
     * Where cloth of even colour ends beside a shade.
     *
     * @param restless cloth whose colour differs more from place to place is figured, in steps of 255; tuned
     * @param misfit what a fit may leave, as a share of the difference between cloth and ground; tuned
     * @param least the least deviation of a side so placed, in coarse pixels; tuned
     * @param apart the share of how far light and the colours' values disagree that its deviation has; tuned
     * @param near a sharp edge no farther off is the same one, in coarse pixels; tuned
     */
    public record Shaded(double restless, double misfit, double least, double apart, double near) {
        private static Shaded standard() {
            return new Shaded(6, 0.05, 0.2, 0.5, 0.9);
        }
    }

    /**
     * How the lens is told from cloth that is cut in a bow.
     *
     * @param priorDeviation the deviation of the lens's kappa before anything is seen; tuned
     * @param clothBow the sagitta of a cloth edge as a share of its length; cut with a wheel it is less, with
     *     shears more; tuned
     * @param spreads multiples of it that are tried, half an octave apart
     * @param sheetBow the sagitta of the edge of paper, cards and mats as a share of its length; tuned
     * @param waverBow a side that sways may have a sagitta of so many times its waver; tuned
     * @param side which sides tell anything
     */
    public record Lens(
            double priorDeviation, double clothBow, List<Double> spreads, double sheetBow, double waverBow, Side side) {
        public Lens {
            spreads = List.copyOf(spreads);
        }

        private static Lens standard() {
            return new Lens(
                    0.08,
                    1.0 / 2000,
                    List.of(0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0, 2.8, 4.0),
                    1.0 / 5000,
                    2,
                    new Side(60, 20, 2.5, 5, 0.04, 0.5, 2));
        }
    }

    /**
     * Which short sides are a corner that shade and blur have cut off.
     *
     * @param shortest shorter than so many reaches; tuned
     * @param leash its corner lies no farther from it than so many of its lengths; tuned
     * @param cloth the mean probability of cloth where the corner is: as likely as not
     */
    public record Blunt(double shortest, double leash, double cloth) {}

    /**
     * What tells threads from the shade beside a clean side and from a soft lens.
     *
     * @param restless colours change so many times more among threads than on the ground; tuned
     * @param leastUnrest and by at least so many steps of 255 more; tuned
     * @param few threads lie closer than so many places along a side; tuned
     * @param threaded among threads the level of cloth differs so much from place to place, beyond what the
     *     ground's does; tuned
     */
    public record Threads(double restless, double leastUnrest, int few, double threaded) {}

    /**
     * What is taken of sides that are not sharp.
     *
     * @param byColour what a side counts as seen that is told by colours all along and by no sharp edge; tuned
     * @param deviation the deviation of such a side, in pixels; tuned
     * @param shadeless a side that is sharper than this has no shade beside it that could move it, see {@link
     *     hearthcloth.photo.edge.EdgeFit}; tuned
     * @param fringe threads longer than this are a fringe, in pixels; tuned
     * @param firm pixels by which a side may really lie farther in, for each pixel of scatter and for all that
     *     it lacks in sharpness: of 995 drawn pieces seen without doubt none was then taken more than 0.25 mm too
     *     large (docs/reading.md)
     * @param mostInset the inset is at most this share of what would leave nothing of a strip
     */
    public record Unsharp(
            double byColour, double deviation, double shadeless, double fringe, double firm, double mostInset) {}

    /**
     * Which sides tell of the lens, and how surely.
     *
     * @param shortest shorter ones are not used, in pixels; tuned
     * @param fewest nor those with fewer places; tuned
     * @param farthest places farther off belong to another edge, in multiples of how near a place must be; tuned
     * @param cut places farther than so many deviations from the parabola get no weight; tuned
     * @param leastScatter the least scatter assumed, in pixels, so that a perfect side does not count without
     *     limit; tuned
     * @param leastShare at least this share of all places must agree; tuned
     * @param noise the deviation from the noise of places is multiplied by this, since a soft edge beside shade
     *     bows without noise; tuned
     */
    public record Side(
            double shortest,
            int fewest,
            double farthest,
            double cut,
            double leastScatter,
            double leastShare,
            double noise) {}
}
