package hearthcloth.photo.scale;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.SheetUnseenException;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.InteriorColour;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Decides which of the shapes is the reference, and how sure that is. All sizes depend on it. Where two shapes could be
 * it, or where it looks like another sheet than the one named, the picture is refused; where only a little is wrong
 * with it, every piece is doubted.
 */
public final class SheetChoice {

    private final SheetFinder finder;
    private final ReferenceSheet sheet;
    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final SheetParameters.Rival rival;

    public SheetChoice(SheetFinder finder, ReferenceSheet sheet, LabThumbnail coarse, GroundModel ground) {
        this.finder = finder;
        this.sheet = sheet;
        this.coarse = coarse;
        this.ground = ground;
        this.rival = finder.parameters().rival();
    }

    /**
     * The sheet that was chosen.
     *
     * @param beside other sheets of the same kind that lie beside it
     * @param doubts the doubts about every piece
     */
    public record Chosen(SheetFinder.Found found, List<SheetFinder.Found> beside, List<Doubt> doubts) {
        public Chosen {
            beside = List.copyOf(beside);
            doubts = List.copyOf(doubts);
        }

        /** The sheets, the one chosen first. */
        public List<SheetFinder.Found> sheets() {
            return Stream.concat(Stream.of(found), beside.stream()).toList();
        }
    }

    /** Whether any of the shapes may be the sheet at all. */
    public boolean isAny(List<FittedPolygon> uncut) {
        return !finder.among(uncut, sheet).isEmpty();
    }

    /** Whether one of the shapes is the sheet with nothing wrong about it. */
    public boolean isAnyRight(List<FittedPolygon> uncut) {
        return finder.among(uncut, sheet).stream().anyMatch(found -> found.skew() <= finder.usualSkew(found));
    }

    /**
     * Whether something besides its proportions distinguishes the sheet from cloth. Otherwise it may not be searched
     * for again on other grounds, since some scrap would fit in the end.
     */
    public boolean isTold() {
        return sheet.white() || sheet.cornerRadius().isPositive();
    }

    /**
     * The likeliest shape, for a first estimate.
     *
     * @param all every shape
     * @param uncut the same, with an empty one in place of each that is cut off
     */
    public SheetFinder.Found likeliest(List<FittedPolygon> all, List<FittedPolygon> uncut) {
        return finder.among(uncut, sheet).stream()
                .min(Comparator.comparingDouble(SheetFinder.Found::score))
                .orElseThrow(() -> none(all, uncut));
    }

    /** The sheet, if it is certain; throws {@link PhotoRefusedException} if it is not. */
    public Chosen sure(List<FittedPolygon> all, List<FittedPolygon> uncut) {
        List<SheetFinder.Found> others = finder.among(uncut, sheet);
        SheetFinder.Found found = likeliest(all, uncut);
        if (sheet.white() && !isWhitest(found.index(), all)) {
            throw none(all, uncut);
        }
        SheetRivals rivals = new SheetRivals(finder, sheet, coarse, ground);
        if (sheet.white()) {
            rivals.ask(found, all, uncut);
        }
        if (others.stream().anyMatch(other -> isRival(other, found))) {
            throw new PhotoRefusedException(PhotographingSentences.noSizes(sheet.said()));
        }
        double skew = found.skew();
        twin().filter(twin -> skew > finder.usualSkew(found) / 2 && finder.skew(found, twin) * rival.explains() < skew)
                .ifPresent(twin -> {
                    throw new PhotoRefusedException(named(twin));
                });
        if (!isTold() && skew > finder.usualSkew(found)) {
            throw none(all, uncut);
        }
        List<SheetFinder.Found> beside =
                isTold() && skew <= finder.usualSkew(found) ? rivals.twins(found, others, all) : List.of();
        return new Chosen(found, beside, doubts(found));
    }

    private List<Doubt> doubts(SheetFinder.Found found) {
        List<Doubt> doubts = new ArrayList<>();
        if (found.skew() > finder.usualSkew(found)) {
            doubts.add(new Doubt(Doubt.Kind.SHEET, PhotographingSentences.doubtSheetSkew(share(found), sheet.said())));
        } else if (twin().filter(twin -> finder.skew(found, twin) < finder.usualSkew(found))
                .isPresent()) {
            doubts.add(new Doubt(Doubt.Kind.SHEET, PhotographingSentences.doubtSheetAlike(sheet.said())));
        }
        return doubts;
    }

    /** How much too long or too short a shape is for the sheet, in whole per cent. */
    static Argument share(SheetFinder.Found found) {
        return Argument.number(Math.round(100 * found.skew()));
    }

    /** Whether another shape could be the sheet just as well and would make everything larger or smaller. */
    private boolean isRival(SheetFinder.Found other, SheetFinder.Found found) {
        boolean asGood = other.skew() <= Math.max(rival.skew() * found.skew(), rival.least() * finder.usualSkew(other));
        boolean asWhite = !sheet.white() || other.score() < found.score() + rival.duller();
        return other.index() != found.index()
                && asGood
                && asWhite
                && other.area() > rival.area() * found.area()
                && !finder.isOneSize(found, other, sheet);
    }

    /** False when a larger shape is as white: then that one is the sheet, but something touches it or it is cut off. */
    private boolean isWhitest(int index, List<FittedPolygon> traced) {
        InteriorColour chosen = InteriorColour.of(traced.get(index).corners(), coarse, ground);
        double area = Math.abs(Polygons.signedArea(traced.get(index).corners()));
        for (FittedPolygon other : traced) {
            if (Math.abs(Polygons.signedArea(other.corners())) > 1.5 * area) {
                InteriorColour interior = InteriorColour.of(other.corners(), coarse, ground);
                if (interior.colour().lightness() > chosen.colour().lightness() - 3
                        && interior.colour().chroma() < chosen.colour().chroma() + 2
                        && !interior.figured()) {
                    return false;
                }
                if (isPaperInShadow(interior, chosen)) {
                    throw new PhotoRefusedException(PhotographingSentences.noShadow(sheet.said()));
                }
            }
        }
        return true;
    }

    /**
     * Whether a shape is as colourless as the one chosen, and as light once less light is allowed for where the ground is darker
     * there.
     */
    private boolean isPaperInShadow(InteriorColour shape, InteriorColour chosen) {
        Lab lit = new WhiteBalance(chosen.colour(), chosen.ground()).of(shape.colour(), shape.ground());
        return !shape.figured()
                && shape.colour().chroma() < chosen.colour().chroma() + 2
                && lit.lightness() > WhiteBalance.PAPER.lightness() - rival.shade();
    }

    /** Letter for A4 and A4 for Letter; empty for a sheet that resembles no other. */
    private Optional<ReferenceSheet> twin() {
        return Stream.of(ReferenceSheet.A4, ReferenceSheet.LETTER)
                .filter(other -> sheet.white() && !other.equals(sheet))
                .findFirst();
    }

    private PhotoRefusedException none(List<FittedPolygon> all, List<FittedPolygon> uncut) {
        Optional<ReferenceSheet> other = twin().filter(twin -> finder.among(uncut, twin).stream()
                .anyMatch(found -> found.score() < 3 && found.skew() < finder.usualSkew(found)));
        return other.map(twin -> new PhotoRefusedException(named(twin)))
                .orElseGet(() ->
                        new SheetUnseenException(new SheetAbsence(sheet, finder, coarse, ground).sentence(all, uncut)));
    }

    private Sentence named(ReferenceSheet twin) {
        return PhotographingSentences.noTwin(sheet.said(), twin.said());
    }
}
