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
        Whiteness white = whiteness(own, InteriorColour.of(shape.corners(), coarse, ground));
        boolean asWhite = white.lighter > -whites().duller() && white.purer > -whites().coloured();
        boolean whiter = asWhite && (white.lighter > whites().lighter() || white.purer > whites().purer());
        double times = finder.times(found, shape.corners());
        boolean isNearlyAsWhite =
                white.lighter > -whites().dimmer() * whites().duller() && white.purer > -whites().coloured();
        if (cutOff || shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return whiter || (asWhite && times > bends().large()) || (isNearlyAsWhite && times > 1);
        }
        SheetFinder.Found said = finder.said(shape, sheet);
        double skew = said.skew();
        boolean isBent = skew < bends().little()
                || (skew < finder.parameters().proportions().most() && finder.isOneSize(found, said, sheet))
                || (skew < bends().much() && finder.offRectangle(said) > bends().crooked());
        boolean isPale = asWhite || (isNearlyAsWhite && times > 1);
        return whiter ? skew < bends().most() : isPale && isBent && !(isTwin(found, said) && isLike(own, said));
    }

    /**
     * The other sheets of the same kind that lie beside the one chosen: of its size and as white, with nothing wrong about them.
     *
     * @param candidates the shapes that may be the sheet
     */
    List<SheetFinder.Found> twins(
            SheetFinder.Found found, List<SheetFinder.Found> candidates, List<FittedPolygon> all) {
        InteriorColour own = InteriorColour.of(all.get(found.index()).corners(), coarse, ground);
        return candidates.stream()
                .filter(other -> other.index() != found.index())
                .filter(other -> isTwin(found, other))
                .filter(other -> isLike(own, other))
                .toList();
    }

    private boolean isLike(InteriorColour own, SheetFinder.Found other) {
        InteriorColour seen = InteriorColour.of(other.corners(), coarse, ground);
        Whiteness white = whiteness(own, seen);
        return !sheet.white()
                || (!seen.figured()
                        && Math.abs(white.lighter) < whites().lighter()
                        && Math.abs(white.purer) < whites().coloured());
    }

    /** How much lighter than the sheet chosen something is, the light allowed for, and how much less coloured. */
    private record Whiteness(double lighter, double purer) {}

    private Whiteness whiteness(InteriorColour own, InteriorColour other) {
        Lab chosen = paper(own);
        Lab seen = paper(other);
        Lab lit = new WhiteBalance(chosen, own.ground()).of(seen, other.ground());
        return new Whiteness(
                Math.max(lit.lightness(), unlit(chosen, seen)) - WhiteBalance.PAPER.lightness(),
                chosen.chroma() - seen.chroma());
    }

    /** Whether it is another sheet of the same kind, with nothing wrong about it: by that one everything measures the same. */
    private boolean isTwin(SheetFinder.Found found, SheetFinder.Found said) {
        return said.skew() <= finder.usualSkew(said) && finder.isOneSize(found, said, sheet);
    }

    /**
     * How light it is, as seen, when the paper chosen is as light as paper is: where the ground is of two kinds, it does not tell
     * how the light differs, since a dark mat looks as a floor in shadow does.
     */
    private double unlit(Lab chosen, Lab seen) {
        return ground.kinds().size() > 1
                ? WhiteBalance.PAPER.lightness() + seen.lightness() - chosen.lightness()
                : Double.NEGATIVE_INFINITY;
    }

    /** The colour of paper that something lies on, or that is printed: of its two colours the lighter, where that is not little. */
    private static Lab paper(InteriorColour inside) {
        InteriorColour.Halves halves = inside.halves();
        Lab light = halves.one().lightness() > halves.two().lightness() ? halves.one() : halves.two();
        return inside.figured() && light.lightness() > inside.colour().lightness() ? light : inside.colour();
    }
}
