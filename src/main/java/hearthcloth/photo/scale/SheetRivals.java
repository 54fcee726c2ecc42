package hearthcloth.photo.scale;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.InteriorColour;
import hearthcloth.words.sentence.PhotographingSentences;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Paper that is covered, bent, in shadow or cut off has not the proportions of a sheet any more, and a scrap may have them. So
 * whatever is as white as what was chosen and may be paper in such a plight makes the reader ask.
 */
record SheetRivals(SheetFinder finder, ReferenceSheet sheet, LabThumbnail coarse, GroundModel ground) {

    private SheetParameters.Whiter whites() {
        return finder.parameters().whiter();
    }

    private SheetParameters.Bent bends() {
        return finder.parameters().bent();
    }

    /** A thing larger or smaller than this many times by area is not another sheet of the same kind. */
    private double otherSize() {
        return 1 + 2 * whites().sameSize();
    }

    /**
     * Asks where another shape may be the sheet.
     *
     * @throws PhotoRefusedException with what was seen
     */
    void ask(SheetFinder.Found found, List<FittedPolygon> all, List<FittedPolygon> uncut) {
        InteriorColour own = InteriorColour.of(all.get(found.index()).corners(), coarse, ground);
        boolean isAny = IntStream.range(0, all.size())
                .filter(i -> i != found.index() && all.get(i).corners().size() > 2)
                .filter(i -> Math.abs(Polygons.signedArea(all.get(i).corners())) > whites().area() * found.area())
                .anyMatch(i ->
                        isRival(found, own, all.get(i), uncut.get(i).corners().isEmpty()));
        if (isAny) {
            throw new PhotoRefusedException(PhotographingSentences.noRival(sheet.said()));
        }
    }

    private boolean isRival(SheetFinder.Found found, InteriorColour own, FittedPolygon shape, boolean cutOff) {
        InteriorColour other = InteriorColour.of(shape.corners(), coarse, ground);
        Lab chosen = paper(own);
        Lab seen = paper(other);
        Lab lit = new WhiteBalance(chosen, own.ground()).of(seen, other.ground());
        double lighter = lit.lightness() - WhiteBalance.PAPER.lightness();
        double purer = chosen.chroma() - seen.chroma();
        boolean asWhite = lighter > -whites().duller() && purer > -whites().coloured();
        boolean whiter = asWhite && (lighter > whites().lighter() || purer > whites().purer());
        double times = finder.times(found, shape.corners());
        if (cutOff || shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return whiter || (asWhite && times > bends().large());
        }
        SheetFinder.Found said = finder.said(shape, sheet);
        double skew = said.skew();
        boolean isBent = skew < bends().flat()
                || (skew < bends().little() && times > otherSize())
                || (skew < bends().much() && finder.offRectangle(said) > bends().crooked());
        boolean isTwin = Math.abs(Math.log(times)) < Math.log(otherSize());
        return !isTwin && (whiter ? skew < bends().most() : asWhite && isBent);
    }

    /** The colour of paper that something lies on, or that is printed: of its two colours the lighter, where that is not little. */
    private static Lab paper(InteriorColour inside) {
        InteriorColour.Halves halves = inside.halves();
        Lab light = halves.one().lightness() > halves.two().lightness() ? halves.one() : halves.two();
        return inside.figured() && light.lightness() > inside.colour().lightness() ? light : inside.colour();
    }
}
