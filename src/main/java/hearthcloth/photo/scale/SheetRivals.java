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

    /** Paper with four corners is bent or covered by less than this skew. */
    private static final double BENT_SKEW = 0.025;

    /** Whiter things that are more than this askew were never a sheet of this kind. */
    private static final double MOST_SKEW = 0.2;

    /** A larger thing on the floor by this share is not another sheet of the same kind. */
    private static final double LARGER = 1 + 2 * SheetChoice.SAME_SIZE;

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
                .anyMatch(i -> isRival(found, own, all.get(i), uncut.get(i).corners().isEmpty()));
        if (isAny) {
            throw new PhotoRefusedException("Two things in the picture could be the " + sheet.name()
                    + ": one has its shape, and another is as white or whiter but bent, covered, in shadow or cut off. Tap the four"
                    + " corners of the right one, or take the other out of the picture and take the picture again.");
        }
    }

    private boolean isRival(SheetFinder.Found found, InteriorColour own, FittedPolygon shape, boolean cutOff) {
        InteriorColour other = InteriorColour.of(shape.corners(), coarse, ground);
        Lab lit = new WhiteBalance(own.colour(), own.ground()).of(other.colour(), other.ground());
        double lighter = lit.lightness() - WhiteBalance.PAPER.lightness();
        double purer = own.colour().chroma() - other.colour().chroma();
        boolean asWhite = lighter > -DULLER && purer > -2;
        boolean whiter = asWhite && (lighter > WHITER || purer > PURER);
        if (cutOff) {
            return whiter;
        }
        if (shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return whiter;
        }
        double skew = finder.said(shape, sheet).skew();
        double times = finder.times(found, shape.corners());
        boolean isTwin = Math.abs(Math.log(times)) < Math.log(LARGER);
        return !isTwin && (whiter ? skew < MOST_SKEW : asWhite && times > LARGER && skew < BENT_SKEW);
    }
}
