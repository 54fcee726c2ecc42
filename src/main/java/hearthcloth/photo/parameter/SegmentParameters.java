package hearthcloth.photo.parameter;

/**
 * How the reader tells pieces from what they lie on and from each other. "Tuned" means set by trial on the drawers of
 * drawn photographs, as docs/reading.md tells them.
 *
 * @param foreground what stands out from the ground
 * @param lines which lines are the floor's joints
 * @param patches which close lines are a cloth's
 * @param rug when small shapes are a rug's figures
 * @param figures which shapes those are
 * @param parting where one shape is two pieces
 */
public record SegmentParameters(
        Foreground foreground, Lines lines, Patches patches, Rug rug, Figures figures, Parting parting) {

    /** The values that the reader works with. */
    public static SegmentParameters standard() {
        return new SegmentParameters(
                Foreground.standard(),
                Lines.standard(),
                Patches.standard(),
                Rug.standard(),
                Figures.standard(),
                Parting.standard());
    }

    /**
     * What stands out from the ground, and as one shape.
     *
     * @param deviations so many standard deviations of the ground's texture; tuned
     * @param leastDifference a smaller difference never stands out, however even the ground is, in CIELAB
     *     units; tuned
     * @param noise variance added for the camera's noise and quantisation, in squared CIELAB units; tuned
     * @param opening half the width of lines that the opening removes, in coarse pixels; tuned
     * @param apart half the width of what may join neighbours, such as a joint, in coarse pixels; tuned
     * @param shade half the width of a shade between cloths that nearly touch, in coarse pixels; tuned
     */
    public record Foreground(
            double deviations, double leastDifference, double noise, int opening, int apart, int shade) {
        private static Foreground standard() {
            return new Foreground(3.3, 4.5, 1.2, 3, 5, 10);
        }
    }

    /**
     * Which lines are joints of the floor: long, narrow, of one colour, and from rim to rim.
     *
     * @param straight how wide and long they are
     * @param scatter how far one may be from their common colour, in CIELAB units, as a difference from the
     *     ground; tuned
     * @param leastShare the soft edge of a joint has at least this share of its difference from the ground; tuned
     * @param mostShare and at most this share; tuned
     * @param agreeing lines are joints only where more than this share is of one colour; tuned
     * @param rims joints go on under the pieces and off the picture, so they reach this many of its rims
     */
    public record Lines(
            Straight straight, double scatter, double leastShare, double mostShare, double agreeing, int rims) {
        private static Lines standard() {
            return new Lines(new Straight(5, 80, 9, 30, 2.2), 7, 0.25, 2.2, 2.0 / 3, 2);
        }
    }

    /**
     * Which close lines are a cloth's and no floor's.
     *
     * @param close lines no farther apart than twice this are close, in coarse pixels; tuned
     * @param patch a patch of them is nowhere narrower than twice this, in coarse pixels; tuned
     * @param beside so much of the ground's colour may lie between two colours of a cloth, in coarse pixels;
     *     tuned
     * @param thin what is thinner than twice this may be the rim of a joint, in coarse pixels; tuned
     * @param atRim a place nearer to a rim of the picture has reached it, in coarse pixels; tuned
     * @param grid close lines from rim to rim over more than this share of the picture are a mat's grid; tuned
     */
    public record Patches(int close, int patch, int beside, int thin, int atRim, double grid) {
        private static Patches standard() {
            return new Patches(5, 12, 2, 2, 3, 0.02);
        }
    }

    /**
     * When small shapes are a rug's figures: they recur all over and run off the picture.
     *
     * @param figures at least so many separate figures; tuned
     * @param cut the picture's rim cuts off at least so many; tuned
     * @param sides on at least so many of its sides; tuned
     * @param parts the picture is divided into so many by so many parts; tuned
     * @param spread this share of the parts holds figures; tuned
     * @param colourSpread this share of the parts holds each of their colours; tuned
     */
    public record Rug(int figures, int cut, int sides, int parts, double spread, double colourSpread) {
        private static Rug standard() {
            return new Rug(20, 4, 3, 5, 0.6, 0.35);
        }
    }

    /**
     * Which shapes are such figures, and what of them clings to a piece.
     *
     * @param size how large they are
     * @param common a colour belongs to the rug when it occurs in this share of them; tuned
     * @param most a shape is a figure when this share of it has the rug's colours; tuned
     * @param body what belongs to a piece
     */
    public record Figures(FigureSize size, double common, double most, FigureBody body) {
        private static Figures standard() {
            return new Figures(new FigureSize(0.07, 5, 1.3), 0.08, 0.5, new FigureBody(3, 2, 0.01, 0.25));
        }
    }

    /**
     * Where one shape is two pieces.
     *
     * @param fragments when parts of a mask are pieces
     * @param chords where a shape is cut through
     * @param compact a shape that fills this share of its convex hull is one piece, or neighbours whose edges
     *     are in line; tuned
     * @param pale when something is white enough for paper
     */
    public record Parting(Fragments fragments, Chords chords, double compact, Pale pale) {
        private static Parting standard() {
            return new Parting(
                    new Fragments(0.08, 0.75, 0.66, 0.9, 12),
                    new Chords(0.2, 0.6, 0.12, 12, 300),
                    0.93,
                    new Pale(10, 18, 2, 0.004));
        }
    }

    /**
     * How wide and long a joint is; lengths in coarse pixels.
     *
     * @param half half its width at most, before its colour is known; tuned
     * @param length it is longer than this, to be no part of a piece; tuned
     * @param wide half its width at most once its colour is known; tuned
     * @param wideLength it is then longer than this; tuned
     * @param wider so many times wider than the mean where it is near or where two cross; tuned
     */
    public record Straight(int half, double length, int wide, double wideLength, double wider) {}

    /**
     * How large a rug's figure is.
     *
     * @param largest its span as a share of the picture's longer side; tuned
     * @param narrow what is narrower on average is the rest of a joint, a thread or lint, in coarse pixels;
     *     tuned
     * @param larger so many times as large as nine in ten of them, by the camera's slant and where two meet;
     *     tuned
     */
    public record FigureSize(double largest, double narrow, double larger) {}

    /**
     * What belongs to a piece and not to the rug under it.
     *
     * @param half whatever is at least twice this thick, in coarse pixels; tuned
     * @param soft its edge is soft for so many coarse pixels more; tuned
     * @param own its colours are those that hold this share of its core; tuned
     * @param thick it is judged by its core when that is this share of it; tuned
     */
    public record FigureBody(int half, int soft, double own, double thick) {}

    /**
     * When the parts of a mask are pieces that lie close together.
     *
     * @param least smaller parts, as a share of the whole, are fragments of it; tuned
     * @param covered the parts make up this share of the whole, or it fell apart too far to judge; tuned
     * @param solid even a bent piece fills this share of its convex hull: an L whose arms are a third of its
     *     sides fills 5/7; tuned
     * @param convex at least one of the parts fills this share of its convex hull; tuned
     * @param twoColours mean colours farther apart are of two cloths, in CIELAB units; tuned
     */
    public record Fragments(double least, double covered, double solid, double convex, double twoColours) {}

    /**
     * Where a shape is cut through between two hollow corners.
     *
     * @param hollow the sine by which a corner's sides turn back; tuned
     * @param longest the longest chord, as a multiple of the square root of the smaller part's area; tuned
     * @param bridge a shorter chord, in the same measure, is a bridge whatever the colours; tuned
     * @param twoColours mean colours farther apart are of two fabrics, in CIELAB units; tuned
     * @param leastArea the least area of a part, in square coarse pixels; tuned
     */
    public record Chords(double hollow, double longest, double bridge, double twoColours, double leastArea) {}

    /**
     * When something is white enough for paper, told without its outline.
     *
     * @param lighter lighter than its ground by more, in L*; less is what folds and grain do; tuned
     * @param mostChroma paper in a warm room has no more colour, as CIELAB chroma; tuned
     * @param print print and pencil lines so thin do not divide it: half their width in coarse pixels; tuned
     * @param least smaller shapes are no sheet, as a share of the picture; tuned
     */
    public record Pale(double lighter, double mostChroma, int print, double least) {}
}
