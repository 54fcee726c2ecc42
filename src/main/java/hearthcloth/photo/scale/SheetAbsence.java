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
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
    String sentence(List<FittedPolygon> all, List<FittedPolygon> uncut) {
        String seen = likest(all)
                .map(i -> seen(all.get(i), uncut.get(i)))
                .orElse(isGroundWhite() ? groundIsWhite() : nothing());
        return "No " + sheet.name() + " was found. " + seen;
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

    private String seen(FittedPolygon shape, FittedPolygon uncut) {
        String thing = (sheet.white() ? "Something white lies " : "Something with four corners lies ")
                + where(Hulls.inner(shape.corners()));
        if (uncut.corners().isEmpty()) {
            return thing
                    + ", but it runs off the picture, or something that does touches it. Take the picture again with the "
                    + sheet.name() + " whole in it and free all round.";
        }
        if (shape.corners().size() != 4 || !SheetFinder.convex(shape.corners())) {
            return thing
                    + ", but its rim is not four straight sides: something touches it or lies on it, or it is folded. Lay the "
                    + sheet.name() + " flat, touching nothing, and take the picture again.";
        }
        double skew = finder.said(shape, sheet).skew();
        if (skew > finder.parameters().proportions().most()) {
            return String.format(
                    Locale.ROOT,
                    "%s, but its sides are %.0f %% off the proportions of the %s. If it is that, it is bent or partly"
                            + " covered: lay it flat and clear, touching nothing, and take the picture again; if not, say what it is.",
                    thing,
                    100 * skew,
                    sheet.name());
        }
        return thing + ", but it is too small or too unclear in the picture to measure by. Lay the " + sheet.name()
                + " flat, touching nothing, and take the picture again from nearer by.";
    }

    /** Where in the picture something lies, in words. */
    private String where(Point place) {
        String down = third(place.y() / coarse.step / coarse.height, "upper", "lower");
        String across = third(place.x() / coarse.step / coarse.width, "left", "right");
        return down.isEmpty() && across.isEmpty()
                ? "in the middle of the picture"
                : "in the " + (down + " " + across).strip() + " part of the picture";
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

    private String groundIsWhite() {
        return "What fills most of the picture is light and nearly without colour itself: either the " + sheet.name()
                + " fills the picture, or it lies on something as white as itself. Lay it on something darker or more colourful,"
                + " with the pieces round it, touching nothing, and take the picture again.";
    }

    private String nothing() {
        return (sheet.white()
                        ? "Nothing white with four straight sides stands out from what it lies on. "
                        : "Nothing with four straight sides stands out from what it lies on. ")
                + "Lay it flat among the pieces, whole in the picture, touching nothing, and take the picture from above.";
    }
}
