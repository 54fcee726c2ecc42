package hearthcloth.work.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** The shape of an outline in a maker's words. */
public final class ShapeWords {

    /** A corner within this many degrees of a right angle is called square. */
    private static final double SQUARE = 3;
    /** A strip is at least this many times as long as it is wide. */
    private static final double STRIP = 4;
    /** Sides that differ by less than this share are called equal. */
    private static final double EQUAL = 0.03;

    private ShapeWords() {}

    /** A word or phrase such as "rectangle", "strip", "triangle", "L-shape", "four uneven sides". */
    public static String of(PieceOutline outline, Voice voice) {
        List<Point> corners = outline.floor();
        return voice.rooms().reporting().readShape(String.valueOf(corners.size()), kind(corners));
    }

    private static String kind(List<Point> corners) {
        return switch (corners.size()) {
            case 3 -> "TRIANGLE";
            case 4 -> isSquareCornered(corners) ? oblong(corners) : "UNEVEN";
            case 6 -> isSquareCornered(corners) ? "L" : "OTHER";
            default -> "OTHER";
        };
    }

    private static String oblong(List<Point> corners) {
        double one = corners.get(0).to(corners.get(1));
        double two = corners.get(1).to(corners.get(2));
        double ratio = Math.max(one, two) / Math.min(one, two);
        return ratio >= STRIP ? "STRIP" : ratio <= 1 + EQUAL ? "SQUARE" : "RECTANGLE";
    }

    /** Whether every corner is a right angle, to one side or the other. */
    private static boolean isSquareCornered(List<Point> corners) {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % n);
            Point c = corners.get((i + 2) % n);
            double along = (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y());
            double turn = Math.toDegrees(Math.acos(along / (a.to(b) * b.to(c))));
            if (Math.abs(turn - 90) > SQUARE) {
                return false;
            }
        }
        return true;
    }
}
