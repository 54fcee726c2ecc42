package hearthcloth.photo.parameter;

/**
 * How the reader tells the sheet from everything else that lies there. "Tuned" means set by trial on the drawers of
 * drawn photographs, as docs/reading.md tells them.
 *
 * @param proportions which shapes have a sheet's proportions
 * @param score which of them is likeliest
 * @param rival what makes another shape a rival of the one chosen
 * @param whiter what is as white as it
 * @param bent what may be the sheet, bent
 * @param faint paper that hardly differs from its ground
 */
public record SheetParameters(
        Proportions proportions, Score score, Rival rival, Whiter whiter, Bent bent, Faint faint) {

    /** The values that the reader works with. */
    public static SheetParameters standard() {
        return new SheetParameters(
                Proportions.standard(),
                Score.standard(),
                Rival.standard(),
                Whiter.standard(),
                Bent.standard(),
                Faint.standard());
    }

    /**
     * Which shapes have a sheet's proportions.
     *
     * @param most the most that proportions and right angles may be off, as a share: half of what A4 and
     *     Letter differ by, 0.09
     * @param usual the most that they are off when nothing is wrong; true sheets measured 0.008 at most to 35°
     *     of tilt
     * @param pixels to which so many pixels at an end of the shortest side are added; tuned
     * @param round the least roundness of a card's corners; true cards measured 0.90 to 1.09, scraps −0.55 to
     *     0.03 (docs/reading.md)
     * @param roundPixels with fewer pixels to a millimetre the roundness cannot be judged; tuned
     * @param mostSeenMm the most of the floor that a picture's longer side shows to somebody who stands, in
     *     millimetres
     */
    public record Proportions(
            double most, double usual, double pixels, double round, double roundPixels, double mostSeenMm) {
        private static Proportions standard() {
            return new Proportions(0.045, 0.015, 1.5, 0.5, 1, 3000);
        }
    }

    /**
     * Which of them is likeliest; the lowest score is.
     *
     * @param range the logarithm of the focal length may be off the usual one by this without cost; tuned
     * @param unusual the cost, as a skew, for each unit of its logarithm beyond; tuned; another focal length
     *     explains a slanted A4 as a Letter
     * @param most shapes with a higher score are not candidates; tuned
     * @param larger how much more the logarithm of the area counts when the reference may be any rectangle; tuned
     * @param printed how much less being plain counts for cards, which are printed; tuned
     */
    public record Score(double range, double unusual, double most, double larger, double printed) {
        private static Score standard() {
            return new Score(0.18, 0.15, 6, 3, 0.25);
        }
    }

    /**
     * What makes another shape a rival of the one chosen.
     *
     * @param area with less than this share of its area a shape is none; tuned
     * @param skew a rival's skew is at most so many times the sheet's; tuned
     * @param least or this share of what is usual for the rival; tuned
     * @param duller a rival of white paper scores at most so many points worse; tuned
     * @param explains when the other kind of sheet explains what is seen so many times better, the wrong one
     *     was named; tuned
     * @param shade paper in shadow is no duller than other paper by more, once that is allowed for, in L*; tuned
     */
    public record Rival(double area, double skew, double least, double duller, double explains, double shade) {
        private static Rival standard() {
            return new Rival(0.25, 2, 0.4, 1.2, 3, 3);
        }
    }

    /**
     * What is as white as the sheet chosen, or whiter, once the light is allowed for.
     *
     * @param area with less than this share of its area a shape is no rival; tuned
     * @param lighter whiter when lighter by more, in L*; tuned
     * @param purer or with so much less chroma; tuned
     * @param duller as white when darker by no more, in L*; tuned
     * @param dimmer what is larger than the sheet chosen may be darker by so many times as much: where it is cut off,
     *     covered or crossed by the rim of a shadow, how the light differs is not told well; tuned
     * @param coloured and its chroma is more by no more than this; tuned
     * @param sameSize two sheets of one kind never differ by more than this share of a length, and by less where they tell it; tuned
     */
    public record Whiter(
            double area, double lighter, double purer, double duller, double dimmer, double coloured, double sameSize) {
        private static Whiter standard() {
            return new Whiter(0.3, 3.5, 3.5, 3, 1.5, 2, 0.03);
        }
    }

    /**
     * What may be the sheet, bent, folded or half in shadow.
     *
     * @param large what is as white without four corners is the sheet covered where it has this share of its
     *     area; tuned
     * @param little paper a little bent is askew by less; tuned
     * @param much paper bent much is askew by less, and no rectangle any more; tuned
     * @param crooked which it is when it is off every rectangle by more than this; tuned
     * @param most whiter things more askew were never a sheet of this kind; tuned
     */
    public record Bent(double large, double little, double much, double crooked, double most) {
        private static Bent standard() {
            return new Bent(0.5, 0.025, 0.12, 0.012, 0.2);
        }
    }

    /**
     * Paper that hardly differs from its ground, told by four long sharp rims that end where they meet.
     *
     * @param edgels where the colour steps
     * @param rows where it steps for a long way
     * @param round which four rows close
     * @param paper which of these are paper
     */
    public record Faint(Edgel edgels, Rows rows, Round round, Paper paper) {
        private static Faint standard() {
            return new Faint(
                    new Edgel(1.3, 2.5, 2, 15, 0.12, 5),
                    new Rows(5, 50, 25, 0.45, 40, 160),
                    new Round(25, 50, 70, 0.4, 0.55, 0.4),
                    new Paper(6, 0.5, 1.5, 1.2));
        }
    }

    /**
     * Where the colour steps, and which of these places belong to a line; lengths in coarse pixels.
     *
     * @param leastStep the least step beyond the slope, in CIELAB units: a third of 4, which is a small
     *     difference
     * @param overNoise it is also so many times the median step, which is noise; tuned
     * @param near how far from a line one may be; tuned
     * @param turnedDegrees and by how much turned, in degrees; tuned
     * @param beyond the stretch beyond a corner that is tested, as a share of the side; tuned
     * @param past which begins so far past the corner; tuned
     */
    public record Edgel(
            double leastStep, double overNoise, double near, double turnedDegrees, double beyond, double past) {}

    /**
     * Where the colour steps for a long way; lengths in coarse pixels.
     *
     * @param sway how far a line's direction may be from an edgel's, in steps of a degree and a half; tuned
     * @param shortest shorter rows are passed over; the shorter side of the smallest sheet accepted is longer
     * @param longestGap a longer gap ends a row; tuned
     * @param dense the least number of edgels for each pixel of its length; tuned
     * @param most the most rows returned; tuned
     * @param rounds the most peaks examined; tuned
     */
    public record Rows(int sway, int shortest, int longestGap, double dense, int most, int rounds) {}

    /**
     * Which four rows close.
     *
     * @param oppositeDegrees opposite sides are within this of parallel, in degrees; tuned
     * @param neighbouringDegrees neighbouring ones are farther from it, in degrees; tuned
     * @param shortest no side is shorter, in coarse pixels; smaller sheets are not taken
     * @param leastSide this share of each side must show an edge; tuned
     * @param leastRound and this share of all four; tuned
     * @param mostBeyond at most this share of the stretch beyond a corner may show one: paper ends there, joints
     *     do not; tuned
     */
    public record Round(
            double oppositeDegrees,
            double neighbouringDegrees,
            double shortest,
            double leastSide,
            double leastRound,
            double mostBeyond) {}

    /**
     * Which of these are paper.
     *
     * @param same corners nearer than this are the same, in coarse pixels, since the edge of paper's shade lies
     *     beside its own; tuned
     * @param leastShare the weighted share of places that must agree with their side; on a fold fewer agree;
     *     tuned
     * @param near how far a place may be off its side, in pixels; tuned
     * @param smoothing the sigma of the further smoothing, in coarse pixels, for edges little above the camera's
     *     noise; tuned
     */
    public record Paper(double same, double leastShare, double near, double smoothing) {}
}
