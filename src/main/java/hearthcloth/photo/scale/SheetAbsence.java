package hearthcloth.photo.scale;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.plane.Hulls;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.segment.InteriorColour;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Says, where no sheet was made out, what was seen that is most like it, and what keeps it from being the sheet. */
record SheetAbsence(ReferenceSheet sheet, SheetFinder finder, LabThumbnail coarse, GroundModel ground) {

    /** What is smaller than this share of the picture is not spoken of. */
    private static final double LEAST_SHARE = 0.004;

    /** Ground lighter than this, in L*, and with less chroma than {@link #COLOURLESS}, may be paper in the shade. */
    private static final double WHITE_GROUND = 60;

    private static final double COLOURLESS = 12;

    /** Paper differs from its ground by more than this, in L*. */
    private static final double LIGHTER = 6;

    /** The ground's colour is looked at in so many places across and down. */
    private static final int PLACES = 12;

    /**
     * The sentence for the maker.
     *
     * @param all every shape
     * @param uncut the same, with an empty one in place of each that is cut off
     */
    Sentence sentence(List<FittedPolygon> all, List<FittedPolygon> uncut) {
        Sentence seen = likest(all)
                .map(i -> seen(all.get(i), uncut.get(i)))
                .orElse(isGroundWhite() ? groundIsWhite() : nothing());
        return PhotographingSentences.absent(sheet.said()).then(seen);
    }

    private Optional<Integer> likest(List<FittedPolygon> all) {
        double least = LEAST_SHARE * coarse.width * coarse.height * coarse.step * coarse.step;
        return IntStream.range(0, all.size())
                .boxed()
                .filter(i -> all.get(i).corners().size() > 2 && area(all.get(i)) > least)
                .filter(i -> isLike(all.get(i)))
                .max(Comparator.comparingDouble(i -> sheet.white()
                        ? area(all.get(i))
                        : -finder.said(all.get(i), sheet).skew()));
    }

    private static double area(FittedPolygon shape) {
        return Math.abs(Polygons.signedArea(shape.corners()));
    }

    private boolean isLike(FittedPolygon shape) {
        if (!sheet.white()) {
            return shape.corners().size() == 4;
        }
        InteriorColour inside = InteriorColour.of(shape.corners(), coarse, ground);
        return inside.colour().lightness() > inside.ground().lightness() + LIGHTER
                && inside.colour().chroma() < COLOURLESS;
    }

    private Sentence seen(FittedPolygon shape, FittedPolygon uncut) {
        String where = where(Hulls.inner(shape.corners()));
        if (uncut.corners().isEmpty()) {
            return but(where, "CUT").then(again("FREE"));
        }
        if (shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return but(where, "RIM").then(again("FLAT"));
        }
        SheetFinder.Found found = finder.said(shape, sheet);
        return found.skew() > finder.parameters().proportions().most()
                ? PhotographingSentences.seenSkew(SheetChoice.share(found), sheet.said(), where, white())
                : but(where, "SMALL").then(again("NEARER"));
    }

    private Sentence but(String where, String why) {
        return PhotographingSentences.seenCut(where, white(), why);
    }

    private Sentence again(String how) {
        return PhotographingSentences.again(how, sheet.said());
    }

    private String white() {
        return sheet.white() ? "yes" : "no";
    }

    /** Where in the picture something lies, as the message names it. */
    private String where(Point place) {
        String down = third(place.y() / coarse.step / coarse.height, "UPPER", "LOWER");
        String across = third(place.x() / coarse.step / coarse.width, "LEFT", "RIGHT");
        return down.isEmpty() && across.isEmpty()
                ? "MIDDLE"
                : (down + " " + across).strip().replace(' ', '_');
    }

    private static String third(double share, String low, String high) {
        return share < 1.0 / 3 ? low : share > 2.0 / 3 ? high : "";
    }

    private boolean isGroundWhite() {
        if (!sheet.white()) {
            return false;
        }
        float[] at = new float[3];
        double[] sum = new double[3];
        for (int i = 0; i < PLACES * PLACES; i++) {
            int x = (int) ((i % PLACES + 0.5) * coarse.width / PLACES);
            int y = (int) ((Math.floorDiv(i, PLACES) + 0.5) * coarse.height / PLACES);
            ground.at(x, y, at);
            for (int c = 0; c < 3; c++) {
                sum[c] += at[c] / (PLACES * PLACES);
            }
        }
        Lab mean = new Lab(Math.max(0, Math.min(100, sum[0])), sum[1], sum[2]);
        return mean.lightness() > WHITE_GROUND && mean.chroma() < COLOURLESS;
    }

    private Sentence groundIsWhite() {
        return PhotographingSentences.seenWhite(sheet.said());
    }

    private Sentence nothing() {
        return PhotographingSentences.seenNothing(white());
    }
}
