package hearthcloth.draw.soft;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.geometry.Point;
import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A picture as dots, drawn by arithmetic alone, so that it is the same everywhere: areas, tints, repeats, discs and lines,
 * their edges smooth; words are left out, since cloth has none. Not thread-safe.
 */
final class Painting {

    /** Lines of each row of dots on which edges are looked for. */
    private static final int FINE = 4;

    private static final int DISC = 24;

    final int width;
    final int height;

    /** Red, green, blue, each already times the share that covers, and that share; from 0 to 1, four numbers a dot. */
    final float[] dots;

    private final double across;
    private final double down;
    private final Map<Picture, Painting> tiles = new HashMap<>();

    private Painting(Picture picture, int width, int height) {
        this.width = width;
        this.height = height;
        this.dots = new float[4 * width * height];
        this.across = width / picture.width();
        this.down = height / picture.height();
        picture.marks().forEach(this::mark);
    }

    static Painting of(Picture picture, int width, int height) {
        return new Painting(picture, width, height);
    }

    /** What a shape is filled with. */
    private interface Ink {
        /** Writes the four numbers of a place, in dots, into a row. */
        void at(double x, double y, float[] into);
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Area area) {
            fill(area.outline(), plain(area.colour(), 1));
        } else if (mark instanceof Mark.Tint tint) {
            fill(tint.outline(), plain(tint.colour(), tint.share()));
        } else if (mark instanceof Mark.Bare bare) {
            fill(bare.outline(), plain(Colour.WHITE, 1));
        } else if (mark instanceof Mark.Disc disc) {
            fill(round(disc), plain(disc.colour(), 1));
        } else if (mark instanceof Mark.Figured figured) {
            fill(figured.outline(), repeated(figured.tile(), figured.laid()));
        } else if (mark instanceof Mark.Line line) {
            line(line.points(), line.stroke());
        }
    }

    private static Ink plain(Colour colour, double share) {
        float red = (float) (colour.red() / 255.0 * share);
        float green = (float) (colour.green() / 255.0 * share);
        float blue = (float) (colour.blue() / 255.0 * share);
        return (x, y, into) -> {
            into[0] = red;
            into[1] = green;
            into[2] = blue;
            into[3] = (float) share;
        };
    }

    private static List<Point> round(Mark.Disc disc) {
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i < DISC; i++) {
            double angle = 2 * Math.PI * i / DISC;
            outline.add(
                    disc.middle().plus(disc.radius() * Elementary.cos(angle), disc.radius() * Elementary.sin(angle)));
        }
        return outline;
    }

    private Ink repeated(Picture tile, Affine laid) {
        double scale = laid.scale() * Math.sqrt(across * down);
        Painting drawn =
                tiles.computeIfAbsent(tile, one -> of(one, whole(one.width() * scale), whole(one.height() * scale)));
        double twice = laid.a() * laid.d() - laid.b() * laid.c();
        return (x, y, into) -> {
            double u = x / across - laid.e();
            double v = y / down - laid.f();
            drawn.sample(
                    (laid.d() * u - laid.c() * v) / twice / tile.width(),
                    (laid.a() * v - laid.b() * u) / twice / tile.height(),
                    into);
        };
    }

    private static int whole(double dots) {
        return (int) Math.max(1, Math.round(dots));
    }

    /** The mean of the four nearest dots of a repeat, at shares of its width and height that may be any number. */
    private void sample(double u, double v, float[] into) {
        double x = (u - Math.floor(u)) * width - 0.5;
        double y = (v - Math.floor(v)) * height - 0.5;
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        float right = (float) (x - left);
        float below = (float) (y - top);
        int a = 4 * (Math.floorMod(top, height) * width + Math.floorMod(left, width));
        int b = 4 * (Math.floorMod(top, height) * width + Math.floorMod(left + 1, width));
        int c = 4 * (Math.floorMod(top + 1, height) * width + Math.floorMod(left, width));
        int d = 4 * (Math.floorMod(top + 1, height) * width + Math.floorMod(left + 1, width));
        for (int i = 0; i < 4; i++) {
            float upper = dots[a + i] + (dots[b + i] - dots[a + i]) * right;
            float lower = dots[c + i] + (dots[d + i] - dots[c + i]) * right;
            into[i] = upper + (lower - upper) * below;
        }
    }

    private void line(List<Point> points, Stroke stroke) {
        Ink ink = plain(stroke.colour(), 1);
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            double length = from.to(points.get(i));
            if (length <= 0) {
                continue;
            }
            Point way = points.get(i).minus(from).times(1 / length);
            double at = 0;
            for (int dash = 0; at < length; dash++) {
                double next = stroke.dashes().isEmpty()
                        ? length
                        : at + stroke.dashes().get(dash % stroke.dashes().size());
                if (dash % 2 == 0) {
                    Point side = way.left().times(stroke.width() / 2);
                    Point begin = from.plus(way.times(at));
                    Point end = from.plus(way.times(Math.min(next, length)));
                    fill(List.of(begin.plus(side), end.plus(side), end.minus(side), begin.minus(side)), ink);
                }
                at = next;
            }
        }
    }

    private void fill(List<Point> outline, Ink ink) {
        double top = outline.stream().mapToDouble(Point::y).min().orElse(0) * down;
        double bottom = outline.stream().mapToDouble(Point::y).max().orElse(0) * down;
        double left = outline.stream().mapToDouble(Point::x).min().orElse(0) * across;
        double right = outline.stream().mapToDouble(Point::x).max().orElse(0) * across;
        int first = (int) Math.max(0, Math.floor(left));
        int after = (int) Math.max(first, Math.min(width, Math.ceil(right)));
        float[] covered = new float[width + 1];
        for (int y = (int) Math.max(0, Math.floor(top)); y < Math.min(height, bottom); y++) {
            Arrays.fill(covered, first, after, 0);
            for (int part = 0; part < FINE; part++) {
                spans(outline, y + (part + 0.5) / FINE, covered);
            }
            for (int x = first; x < after; x++) {
                dot(4 * (y * width + x), Math.min(1, covered[x]), x + 0.5, y + 0.5, ink);
            }
        }
    }

    /** Adds how much of each dot a line across lies within the outline. */
    private void spans(List<Point> outline, double y, float[] covered) {
        double[] at = new double[outline.size()];
        int count = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            double ya = a.y() * down;
            double yb = b.y() * down;
            if ((ya <= y) != (yb <= y)) {
                at[count++] = (a.x() + (b.x() - a.x()) * (y - ya) / (yb - ya)) * across;
            }
        }
        Arrays.sort(at, 0, count);
        for (int i = 1; i < count; i += 2) {
            span(Math.max(0, at[i - 1]), Math.min(width, at[i]), covered);
        }
    }

    private static void span(double from, double to, float[] covered) {
        for (int x = (int) from; x < to; x++) {
            covered[x] += (float) (Math.min(to, x + 1.0) - Math.max(from, x)) / FINE;
        }
    }

    private void dot(int at, float share, double x, double y, Ink ink) {
        if (share > 0) {
            ink.at(x, y, here);
            float rest = 1 - here[3] * share;
            for (int i = 0; i < 4; i++) {
                dots[at + i] = here[i] * share + dots[at + i] * rest;
            }
        }
    }

    private final float[] here = new float[4];
}
