package hearthcloth.photo.scale;

import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * The reference where the maker has tapped its corners.
 *
 * @param sheet as it lies; its deviation is a finger's where a side does not show
 * @param doubts about everything that is measured by it
 */
public record TappedSheet(SheetFinder.Found sheet, List<Doubt> doubts) {

    /** Proportions farther off than this share are no sheet's, however it lies. */
    private static final double MOST_SKEW = 0.12;

    /** A side of which less than this share was seen lies where it was tapped. */
    private static final double SEEN = 0.3;

    /** How well a corner is tapped, as a share of the picture's longer side (common practice, no source). */
    private static final double FINGER = 0.006;

    public TappedSheet {
        doubts = List.copyOf(doubts);
    }

    /**
     * The sheet within the rims nearest to the taps.
     *
     * @param longer side of the picture, in pixels
     * @throws PhotoRefusedException where four such corners cannot be the sheet's
     */
    public static TappedSheet of(FittedPolygon own, SheetFinder finder, ReferenceSheet sheet, int longer) {
        if (own.corners().size() != 4 || !SheetFinder.convex(own.corners())) {
            throw new PhotoRefusedException(PhotographingSentences.noRound(sheet.said()));
        }
        SheetFinder.Found found = finder.said(own, sheet);
        if (found.skew() > MOST_SKEW) {
            throw new PhotoRefusedException(PhotographingSentences.noShare(SheetChoice.share(found), sheet.said()));
        }
        List<Doubt> doubts = new ArrayList<>();
        long hidden = own.fits().stream()
                .mapToDouble(EdgeFit.Fit::share)
                .filter(share -> share < SEEN)
                .count();
        if (hidden > 0) {
            doubts.add(doubt(PhotographingSentences.doubtSheetUnseen(sheet.said(), Math.toIntExact(hidden))));
        } else if (found.skew() > finder.usualSkew(found)) {
            doubts.add(doubt(PhotographingSentences.doubtSheetTapped(SheetChoice.share(found), sheet.said())));
        }
        double deviation = hidden > 0 ? Math.max(found.deviation(), FINGER * longer) : found.deviation();
        return new TappedSheet(
                new SheetFinder.Found(-1, found.corners(), found.size(), found.skew(), found.score(), deviation),
                doubts);
    }

    private static Doubt doubt(Sentence sentence) {
        return new Doubt(Doubt.Kind.SHEET, sentence);
    }
}
