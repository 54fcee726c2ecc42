package hearthcloth.photo;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Polygons;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabTables;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.image.WhiteBalance;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.segment.InteriorColour;
import java.util.List;

/** How cloth looks in a small picture: its colours there, and whether it is plain. */
final class SmallPictureLook {

    /** Cloth whose colours spread no more than this is plain, in CIELAB units, at the size of the screen's picture. */
    private static final double PLAIN = 6;

    private final PixelImage picture;

    SmallPictureLook(PixelImage picture) {
        this.picture = picture;
    }

    /**
     * How the two parts of a piece look, from the difference this small picture shows between each of them and the
     * whole.
     *
     * @param full width in pixels of the picture that the outlines refer to
     */
    List<PieceAppearance> looks(ReadPiece whole, List<ReadPiece> parts, int full) {
        double shrink = (double) picture.width / full;
        Inside all = inside(whole.outline().picture(), shrink);
        return parts.stream()
                .map(part -> {
                    Inside own = inside(part.outline().picture(), shrink);
                    return own.count == 0 || all.count == 0 ? whole.look() : look(whole.look(), own, all);
                })
                .toList();
    }

    /**
     * How the cloth inside an outline looks, read from this small picture as the reader reads it from the large one.
     *
     * @param outline the outline to look at
     * @param scale of the large picture
     * @param sheet that lies on it
     */
    PieceAppearance look(PieceOutline outline, FloorScale scale, ReferenceSheet sheet) {
        double shrink = (double) picture.width / scale.pictureWidth();
        LabThumbnail coarse = LabThumbnail.of(picture);
        GroundModel ground = GroundModel.of(coarse.smoothed(1.2), GroundParameters.standard());
        InteriorColour paper = InteriorColour.of(shrunk(scale.sheetInPicture(), shrink), coarse, ground);
        InteriorColour cloth = InteriorColour.of(shrunk(outline.picture(), shrink), coarse, ground);
        if (cloth.colour().equals(Lab.BLACK)) { // Too narrow in this picture to have an inside: its middle, then.
            Point middle =
                    scale.inPicture(LargestRectangle.inside(outline.floor()).middle());
            cloth = InteriorColour.of(
                    around(shrunk(List.of(middle), shrink).get(0), 3.0 * coarse.step), coarse, ground);
        }
        return PieceAppearance.of(
                cloth, new WhiteBalance(sheet.white() ? paper.colour() : WhiteBalance.PAPER, paper.ground()));
    }

    private static List<Point> around(Point middle, double far) {
        return List.of(middle.plus(-far, -far), middle.plus(far, -far), middle.plus(far, far), middle.plus(-far, far));
    }

    private static List<Point> shrunk(List<Point> corners, double shrink) {
        return corners.stream()
                .map(c -> new Point(c.x() * shrink, c.y() * shrink))
                .toList();
    }

    private static PieceAppearance look(PieceAppearance whole, Inside own, Inside all) {
        Lab colour = new Lab(
                Math.max(0, Math.min(100, whole.colour().lightness() + own.mean.lightness() - all.mean.lightness())),
                whole.colour().a() + own.mean.a() - all.mean.a(),
                whole.colour().b() + own.mean.b() - all.mean.b());
        boolean plain = own.spread <= PLAIN;
        return new PieceAppearance(
                colour,
                plain ? colour : whole.one(),
                plain ? colour : whole.two(),
                plain ? PieceAppearance.Pattern.PLAIN : PieceAppearance.Pattern.FIGURED,
                whole.contrast());
    }

    /** Mean colour, root mean square spread about it, and number of pixels. */
    private record Inside(Lab mean, double spread, int count) {}

    /** The colours inside an outline, a little way in from its rim. */
    private Inside inside(List<Point> corners, double shrink) {
        List<Point> polygon = shrunk(corners, shrink);
        double[] sum = new double[4];
        int count = 0;
        double[] lab = new double[3];
        int low = (int) polygon.stream().mapToDouble(Point::y).min().orElse(0);
        int high = (int) polygon.stream().mapToDouble(Point::y).max().orElse(0);
        int left = (int) polygon.stream().mapToDouble(Point::x).min().orElse(0);
        int right = (int) polygon.stream().mapToDouble(Point::x).max().orElse(0);
        for (int y = Math.max(0, low); y <= Math.min(picture.height - 1, high); y++) {
            for (int x = Math.max(0, left); x <= Math.min(picture.width - 1, right); x++) {
                if (wellInside(polygon, x + 0.5, y + 0.5)) {
                    int rgb = picture.rgb(x, y);
                    LabTables.lab(
                            LabTables.light(rgb >> 16 & 255),
                            LabTables.light(rgb >> 8 & 255),
                            LabTables.light(rgb & 255),
                            lab);
                    for (int c = 0; c < 3; c++) {
                        sum[c] += lab[c];
                        sum[3] += lab[c] * lab[c];
                    }
                    count++;
                }
            }
        }
        double n = Math.max(1, count);
        Lab mean = new Lab(Math.max(0, Math.min(100, sum[0] / n)), sum[1] / n, sum[2] / n);
        double squares = sum[3] / n - mean.lightness() * mean.lightness() - mean.a() * mean.a() - mean.b() * mean.b();
        return new Inside(mean, Math.sqrt(Math.max(0, squares)), count);
    }

    private static boolean wellInside(List<Point> polygon, double x, double y) {
        return Polygons.inside(polygon, x - 3, y)
                && Polygons.inside(polygon, x + 3, y)
                && Polygons.inside(polygon, x, y - 3)
                && Polygons.inside(polygon, x, y + 3);
    }
}
