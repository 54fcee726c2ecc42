package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A camera that looks at the floor's origin from {@code far} millimetres away, its lens without distortion. */
record Pinhole(PixelImage picture, double focal, double tiltRad, double far) {

    Point seen(double x, double y, double z) {
        double sin = Math.sin(tiltRad);
        double cos = Math.cos(tiltRad);
        double dy = y + far * sin;
        double dz = z - far * cos;
        double depth = dy * sin - dz * cos;
        return new Point(
                picture.width / 2.0 + focal * x / depth, picture.height / 2.0 - focal * (dy * cos + dz * sin) / depth);
    }

    /** A sheet's corners, each seen to 0.15 pixels, in the order that a found sheet has them. */
    List<Point> sheet(ReferenceSheet sheet, Point at, double turn, Random chance) {
        List<Point> out = new ArrayList<>();
        double w = sheet.widthMm() / 2;
        double h = sheet.heightMm() / 2;
        double[][] places = {{-w, h}, {w, h}, {w, -h}, {-w, -h}};
        for (double[] place : places) {
            out.add(seen(
                            at.x() + place[0] * Math.cos(turn) - place[1] * Math.sin(turn),
                            at.y() + place[0] * Math.sin(turn) + place[1] * Math.cos(turn),
                            0)
                    .plus(0.15 * chance.nextGaussian(), 0.15 * chance.nextGaussian()));
        }
        return out;
    }
}
