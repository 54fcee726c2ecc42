package hearthcloth.draw.cloth;

import hearthcloth.cloth.Side;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.sew.CutLine;
import java.util.List;
import java.util.Optional;

/**
 * The number of a cut in a circle on its line, the measure beside it where there is room, and a small arrowhead towards
 * the edge it is measured from.
 */
public record CutNumber(CutLine line, Bounds at, String measure, Point towards) {

    public static final double RADIUS = 2.3;
    private static final double ARROW = 1.5;
    private static final Type NUMBER = Type.of(3.2, Weight.BOLD, Palette.SHEET).at(Type.Anchor.MIDDLE);
    private static final Type MEASURE = Type.of(3.3, Weight.SEMIBOLD, Palette.MADDER);

    /**
     * The number at the first place along the line, from its left or top end, where it touches none of {@code taken};
     * with its measure if that fits.
     */
    static Optional<CutNumber> placed(CutLine line, Bounds run, String measure, List<Bounds> taken) {
        return along(line, run, measure, taken).or(() -> along(line, run, "", taken));
    }

    private static Optional<CutNumber> along(CutLine line, Bounds run, String measure, List<Bounds> taken) {
        boolean vertical = line.cut().upright();
        double length = 2 * RADIUS + (measure.isEmpty() ? 0 : MEASURE.width(measure) + 1.4);
        double room = (vertical ? run.height() : run.width()) - length - 1;
        for (double off = 0.5; off <= room + 0.5; off += 1) {
            Bounds at = vertical
                    ? new Bounds(run.x() - RADIUS, run.y() + off, 2 * RADIUS, length)
                    : new Bounds(run.x() + off, run.y() - RADIUS, length, 2 * RADIUS);
            CutNumber number = new CutNumber(line, at, measure, direction(line.from()));
            Bounds whole = number.room();
            if (taken.stream().noneMatch(whole::overlaps)) {
                return Optional.of(number);
            }
        }
        return Optional.empty();
    }

    private static Point direction(Side side) {
        return switch (side) {
            case LEFT -> new Point(-1, 0);
            case RIGHT -> new Point(1, 0);
            case TOP -> new Point(0, -1);
            case BOTTOM -> new Point(0, 1);
        };
    }

    /** Everything it covers, including the arrowhead. */
    Bounds room() {
        double x = at.x() + Math.min(0, towards.x() * ARROW);
        double y = at.y() + Math.min(0, towards.y() * ARROW);
        return new Bounds(
                x, y, at.width() + Math.abs(towards.x()) * ARROW, at.height() + Math.abs(towards.y()) * ARROW);
    }

    void draw(Sketch sketch) {
        boolean vertical = towards.y() == 0;
        Bounds halo = new Bounds(at.x() - 0.35, at.y() - 0.35, at.width() + 0.7, at.height() + 0.7);
        sketch.add(new Mark.Bare(halo.rounded(RADIUS + 0.35)));
        Point disc = vertical
                ? new Point(at.middle().x(), at.bottom() - RADIUS)
                : new Point(at.x() + RADIUS, at.middle().y());
        arrowhead(sketch, disc);
        disc(sketch, disc, line.number());
        if (vertical) {
            Point foot = disc.plus(Dimensions.halfCaps(MEASURE), -RADIUS - 0.6);
            sketch.words(measure, foot, MEASURE.running(Type.Way.UP));
        } else {
            sketch.words(measure, disc.plus(RADIUS + 0.6, Dimensions.halfCaps(MEASURE)), MEASURE);
        }
    }

    /** As a cut that is still to come, in a ring. */
    void drawToCome(Sketch sketch) {
        MatPicture.ring(sketch, at.middle(), line.number());
    }

    private void arrowhead(Sketch sketch, Point disc) {
        double dx = towards.x();
        double dy = towards.y();
        Point tip = disc.plus(dx * (RADIUS + ARROW), dy * (RADIUS + ARROW));
        Point base = disc.plus(dx * (RADIUS - 0.4), dy * (RADIUS - 0.4));
        sketch.add(new Mark.Area(
                List.of(tip, base.plus(dy * 1.5, dx * 1.5), base.plus(-dy * 1.5, -dx * 1.5)), Palette.MADDER));
    }

    /** A number in a madder-red circle, as on the line and in the list. */
    public static void disc(Sketch sketch, Point middle, int number) {
        sketch.add(new Mark.Disc(middle, RADIUS, Palette.MADDER));
        sketch.words(Integer.toString(number), middle.plus(0, Dimensions.halfCaps(NUMBER)), NUMBER);
    }
}
