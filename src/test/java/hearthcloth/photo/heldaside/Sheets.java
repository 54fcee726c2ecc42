package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.List;
import java.util.Random;

/** The things of known size that lie beside the scraps. */
final class Sheets {

    private static final List<Size> MATS = List.of(
            new Size(Length.inches(12), Length.inches(18)),
            new Size(Length.cm(30), Length.cm(22)),
            new Size(Length.cm(45), Length.cm(30)));

    private Sheets() {}

    static ReferenceSheet any(Random chance) {
        double d = chance.nextDouble();
        return d < 0.44
                ? ReferenceSheet.A4
                : d < 0.74
                        ? ReferenceSheet.LETTER
                        : d < 0.87 ? ReferenceSheet.CARD : ReferenceSheet.of(MATS.get(chance.nextInt(MATS.size())));
    }

    static boolean isPaper(ReferenceSheet sheet) {
        return sheet.white();
    }

    static double width(ReferenceSheet sheet) {
        return sheet.size().width().in(Unit.MILLIMETRE);
    }

    static double height(ReferenceSheet sheet) {
        return sheet.size().height().in(Unit.MILLIMETRE);
    }

    /** It, its middle at a place. */
    static Lying laid(ReferenceSheet sheet, Point middle, double angle, Tint ground, Random chance) {
        double w = width(sheet);
        double h = height(sheet);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        List<Point> corners = List.of(
                at(middle, c, s, -w / 2, -h / 2),
                at(middle, c, s, w / 2, -h / 2),
                at(middle, c, s, w / 2, h / 2),
                at(middle, c, s, -w / 2, h / 2));
        double radius = sheet.cornerRadius().in(Unit.MILLIMETRE);
        Rim rim = radius > 0 ? Rim.rounded(corners, radius) : Rim.straight(corners);
        Surface face = isPaper(sheet)
                ? paper(chance.nextInt())
                : radius > 0 ? card(ground, chance) : Grounds.mat(ground, chance);
        Point corner = corners.get(0);
        return new Lying(rim, isPaper(sheet) ? 0.1 : radius > 0 ? 0.76 : 2, face.laid(corner.x(), corner.y(), angle));
    }

    private static Surface paper(int seed) {
        return (x, y, footprint, out) -> {
            double b = 0.84
                    * (1
                            + 0.015 * Grain.smooth(seed, x / 90, y / 120)
                            + 0.008 * Grain.seen(seed + 1, x, y, 3, footprint));
            out[0] = b;
            out[1] = b * 1.003;
            out[2] = b * 1.02;
        };
    }

    /** A card with a sweep of colour, a chip, a name and a number, none of them real. */
    private static Surface card(Tint ground, Random chance) {
        Tint one = Tint.of(0x1d3f72);
        Tint two = Tint.of(0x4f8fc0);
        Tint first = one.difference(ground) > 20 ? one : Tint.of(0xd8dde2);
        Tint second = two.difference(ground) > 20 ? two : Tint.of(0xb0462c);
        int seed = chance.nextInt();
        return (x, y, footprint, out) -> {
            double sweep = Grain.step(0, 1, (x + 0.6 * y) / 118 + 0.1 * Grain.smooth(seed, x / 40, y / 30));
            first.mixed(second, 0.6 * sweep).into(out, 1);
            double chip = Math.min(Math.min(x - 10, 22 - x), Math.min(y - 19, 28 - y));
            Tint.of(0xc9a94f).over(out, Grain.cover(chip, footprint));
            double row = y > 33 && y < 37 ? 4.2 : y > 43 && y < 45.5 ? 2.1 : 0;
            if (row > 0 && x > 10 && x < 74) {
                double in = x / row - Math.floor(x / row);
                boolean ink = Grain.share(seed, (long) Math.floor(x / row), (long) row) > 0.2 && in < 0.66;
                Tint.of(0xe8e8e8).over(out, ink ? 0.8 * Grain.seenShare(row, footprint) : 0);
            }
        };
    }

    private static Point at(Point o, double c, double s, double u, double v) {
        return new Point(o.x() + c * u - s * v, o.y() + s * u + c * v);
    }
}
