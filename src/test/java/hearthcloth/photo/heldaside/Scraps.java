package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Lays scraps out on the floor of a room, beside a sheet. */
final class Scraps {

    /** The least gap between two things, mm. */
    private static final double GAP = 6;

    /** A scrap with what it is made of. */
    record Laid(TruePiece.Made made, Lying thing) {}

    private final Room room;
    private final Rim sheet;
    private final List<Fabric> fabrics;
    private final Random chance;
    private final boolean tidy;
    private final double tidyAngle;
    private final List<Laid> laid = new ArrayList<>();

    Scraps(Room room, Rim sheet, List<Fabric> fabrics, Random chance) {
        this.room = room;
        this.sheet = sheet;
        this.fabrics = fabrics;
        this.chance = chance;
        this.tidy = chance.nextBoolean();
        Point a = sheet.corners.get(0);
        Point b = sheet.corners.get(1);
        this.tidyAngle = Math.atan2(b.y() - a.y(), b.x() - a.x());
    }

    List<Laid> laid() {
        return List.copyOf(laid);
    }

    /** Lays about {@code count} that do not touch, six at least. */
    void spread(int count) {
        double usual = Math.max(38, Math.min(230, 0.62 * Math.sqrt(room.area() / count)));
        for (int round = 0; round < 6 && laid.size() < (round == 0 ? count : 6); round++) {
            for (int i = laid.size(); i < count; i++) {
                one(usual * Math.pow(0.8, round));
            }
        }
    }

    private void one(double usual) {
        Form form = Form.any(chance);
        Edge edge = Edge.any(chance);
        double size = usual * (0.55 + 0.9 * chance.nextDouble());
        for (int k = 0; k < 150; k++) {
            Rim rim = Rim.cut(turned(form.corners(size, chance), angle(), room.anywhere(chance)), edge, chance);
            if (room.holds(rim) && gap(rim) >= GAP) {
                add(form, edge, rim);
                return;
            }
            size = k > 50 ? Math.max(34, size * 0.985) : size;
        }
    }

    /** Pushes one more against or onto one that lies there. */
    void push(double by) {
        for (int k = 0; k < 60; k++) {
            Rim other = laid.get(chance.nextInt(laid.size())).thing().rim();
            Form form = Form.any(chance);
            List<Point> corners = form.corners(60 + 80 * chance.nextDouble(), chance);
            double towards = 2 * Math.PI * chance.nextDouble();
            double angle = angle();
            double far = 500;
            double near = 0;
            Point middle = middle(other);
            for (int step = 0; step < 24; step++) {
                double at = (far + near) / 2;
                Rim rim = Rim.straight(turned(corners, angle, away(middle, towards, at)));
                if (rim.polygon().intersects(other.polygon())) {
                    near = at;
                } else {
                    far = at;
                }
            }
            Rim rim = Rim.cut(turned(corners, angle, away(middle, towards, Math.max(0, far - by))), Edge.CLEAN, chance);
            if (room.holds(rim) && rim.polygon().distance(sheet.polygon()) >= GAP) {
                add(form, Edge.CLEAN, rim);
                return;
            }
        }
    }

    /** Lays one across the picture's rim. */
    void cutOff() {
        for (int k = 0; k < 60; k++) {
            Form form = Form.any(chance);
            Rim rim = Rim.cut(turned(form.corners(110, chance), angle(), room.onRim(chance)), Edge.CLEAN, chance);
            if (gap(rim) >= GAP && !room.shows(rim)) {
                add(form, Edge.CLEAN, rim);
                return;
            }
        }
    }

    private void add(Form form, Edge edge, Rim rim) {
        Fabric fabric = fabrics.get(chance.nextInt(fabrics.size()));
        Point a = rim.corners.get(0);
        Point b = rim.corners.get(1);
        double grain = Math.atan2(b.y() - a.y(), b.x() - a.x())
                + (chance.nextInt(5) == 0 ? chance.nextDouble() * Math.PI : chance.nextInt(2) * Math.PI / 2)
                + 0.02 * chance.nextGaussian();
        Surface face = fabric::colour;
        double off = 200 * chance.nextDouble();
        Lying thing = new Lying(rim, 0.2 + 0.25 * chance.nextDouble(), face.laid(a.x() - off, a.y() - off, grain));
        laid.add(new Laid(new TruePiece.Made(form, edge, fabric.look().name()), thing));
    }

    private double gap(Rim rim) {
        double least = rim.polygon().distance(sheet.polygon()) - 1.2 * rim.reach;
        for (Laid other : laid) {
            Rim there = other.thing().rim();
            least = Math.min(least, rim.polygon().distance(there.polygon()) - 1.2 * (rim.reach + there.reach));
        }
        return least;
    }

    private double angle() {
        return tidy
                ? tidyAngle + chance.nextInt(4) * Math.PI / 2 + 0.04 * chance.nextGaussian()
                : 2 * Math.PI * chance.nextDouble();
    }

    private static Point middle(Rim rim) {
        var at = rim.polygon().getCentroid().getCoordinate();
        return new Point(at.x, at.y);
    }

    private static Point away(Point from, double towards, double by) {
        return new Point(from.x() + by * Math.cos(towards), from.y() + by * Math.sin(towards));
    }

    private static List<Point> turned(List<Point> corners, double angle, Point to) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return corners.stream()
                .map(p -> new Point(to.x() + c * p.x() - s * p.y(), to.y() + s * p.x() + c * p.y()))
                .toList();
    }
}
