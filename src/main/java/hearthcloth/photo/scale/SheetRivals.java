package hearthcloth.photo.scale;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.InteriorColour;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Paper that is covered, bent, in shadow or cut off has not the proportions of a sheet any more, and a scrap may have them. So
 * whatever is as white as what was chosen and may be paper in such a plight makes the reader ask.
 */
record SheetRivals(SheetFinder finder, ReferenceSheet sheet, LabThumbnail coarse, GroundModel ground) {

    /** A shape with less than this share of the chosen one's area is no rival. */
    private static final double LEAST_AREA = 0.3;

    /** A shape is whiter when it is lighter by more than this, in L*, once the light is allowed for. */
    private static final double WHITER = 3.5;

    /** A shape is purer when its chroma is less by more than this. */
    private static final double PURER = 3.5;

    /** A shape is as white when it is darker by no more than this, in L*. */
    private static final double DULLER = 3;

    /** A shape is as white when its chroma is more by no more than this. */
    private static final double MORE_COLOUR = 2;

    /** What is as white, and no whiter, and has not four corners is the sheet covered or folded where it is so large. */
    private static final double LARGE_AREA = 0.5;

    /** Flat paper, half in shadow, is askew by less than this. */
    private static final double FLAT_SKEW = 0.012;

    /** Paper that is a little bent is askew by less than this, and larger than what was chosen. */
    private static final double BENT_SKEW = 0.025;

    /** Paper that is bent much is askew by less than this, and no rectangle any more by more than {@link #CROOKED}. */
    private static final double BENT_MOST = 0.12;

    private static final double CROOKED = 0.012;

    /** Whiter things that are more than this askew were never a sheet of this kind. */
    private static final double MOST_SKEW = 0.2;

    /** A thing larger or smaller than this many times by area is not another sheet of the same kind. */
    private static final double OTHER_SIZE = 1 + 2 * SheetChoice.SAME_SIZE;

    /**
     * Asks where another shape may be the sheet.
     *
     * @throws PhotoRefusedException with what was seen
     */
    void ask(SheetFinder.Found found, List<FittedPolygon> all, List<FittedPolygon> uncut) {
        InteriorColour own = InteriorColour.of(all.get(found.index()).corners(), coarse, ground);
        boolean isAny = IntStream.range(0, all.size())
                .filter(i -> i != found.index() && all.get(i).corners().size() > 2)
                .filter(i -> Math.abs(Polygons.signedArea(all.get(i).corners())) > LEAST_AREA * found.area())
                .anyMatch(i ->
                        isRival(found, own, all.get(i), uncut.get(i).corners().isEmpty()));
        if (isAny) {
            throw new PhotoRefusedException("Two things in the picture could be the " + sheet.name()
                    + ": one has its shape, and another is as white or whiter but bent, covered, in shadow or cut off. Tap the four"
                    + " corners of the right one, or take the other out of the picture and take the picture again.");
        }
    }

    private boolean isRival(SheetFinder.Found found, InteriorColour own, FittedPolygon shape, boolean cutOff) {
        InteriorColour other = InteriorColour.of(shape.corners(), coarse, ground);
        Lab chosen = paper(own);
        Lab seen = paper(other);
        Lab lit = new WhiteBalance(chosen, own.ground()).of(seen, other.ground());
        double lighter = lit.lightness() - WhiteBalance.PAPER.lightness();
        double purer = chosen.chroma() - seen.chroma();
        boolean asWhite = lighter > -DULLER && purer > -MORE_COLOUR;
        boolean whiter = asWhite && (lighter > WHITER || purer > PURER);
        double times = finder.times(found, shape.corners());
        if (cutOff || shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return whiter || (asWhite && times > LARGE_AREA);
        }
        SheetFinder.Found said = finder.said(shape, sheet);
        double skew = said.skew();
        boolean isBent = skew < FLAT_SKEW
                || (skew < BENT_SKEW && times > OTHER_SIZE)
                || (skew < BENT_MOST && finder.offRectangle(said) > CROOKED);
        boolean isTwin = Math.abs(Math.log(times)) < Math.log(OTHER_SIZE);
        return !isTwin && (whiter ? skew < MOST_SKEW : asWhite && isBent);
    }

    /** The colour of paper that something lies on, or that is printed: of its two colours the lighter, where that is not little. */
    private static Lab paper(InteriorColour inside) {
        InteriorColour.Halves halves = inside.halves();
        Lab light = halves.one().lightness() > halves.two().lightness() ? halves.one() : halves.two();
        return inside.figured() && light.lightness() > inside.colour().lightness() ? light : inside.colour();
    }
}
