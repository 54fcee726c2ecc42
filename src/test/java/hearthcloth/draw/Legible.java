package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import java.util.List;

/** Looks at a picture as a reader would: every word free of every other, on the sheet, and in contrast with its ground. */
final class Legible {

    /** The least contrast of text with its ground: docs/sources.md#contrast. */
    private static final double CONTRAST = 4.5;

    private Legible() {}

    static void check(Picture picture) {
        Bounds sheet = new Bounds(0, 0, picture.width(), picture.height());
        List<Mark.Words> words = picture.words();
        for (int i = 0; i < words.size(); i++) {
            Bounds one = words.get(i).bounds();
            assertThat(sheet.contains(one.inset(0.3)))
                    .as("%s: \"%s\" on the sheet", picture.title(), words.get(i).text())
                    .isTrue();
            for (int j = i + 1; j < words.size(); j++) {
                assertThat(one.inset(0.15).overlaps(words.get(j).bounds().inset(0.15)))
                        .as(
                                "%s: \"%s\" over \"%s\"",
                                picture.title(),
                                words.get(i).text(),
                                words.get(j).text())
                        .isFalse();
            }
        }
        contrast(picture);
    }

    private static void contrast(Picture picture) {
        for (int i = 0; i < picture.marks().size(); i++) {
            if (picture.marks().get(i) instanceof Mark.Words words) {
                Bounds ink = words.bounds().inset(0.2);
                for (double[] share :
                        new double[][] {{0.02, 0.2}, {0.98, 0.2}, {0.5, 0.5}, {0.02, 0.75}, {0.98, 0.75}}) {
                    double x = ink.x() + ink.width() * share[0];
                    double y = ink.y() + ink.height() * share[1];
                    Colour ground = ground(picture.marks().subList(0, i), x, y);
                    assertThat(words.type().colour().contrastWith(ground))
                            .as("%s: \"%s\" on %s", picture.title(), words.text(), ground.hex())
                            .isGreaterThanOrEqualTo(CONTRAST);
                }
            }
        }
    }

    /** The colour on top at a point; areas are taken as their bounding boxes, which all that lie under words fill. */
    private static Colour ground(List<Mark> before, double x, double y) {
        for (int i = before.size() - 1; i >= 0; i--) {
            Mark mark = before.get(i);
            if (mark instanceof Mark.Area area && holds(area.bounds(), x, y)) {
                return area.colour();
            }
            if (mark instanceof Mark.Bare bare && holds(bare.bounds(), x, y)) {
                return Palette.SHEET;
            }
            if (mark instanceof Mark.Tint tint && holds(tint.bounds(), x, y)) {
                return mixed(tint, ground(before.subList(0, i), x, y));
            }
            if (mark instanceof Mark.Disc disc
                    && Math.hypot(disc.middle().x() - x, disc.middle().y() - y) <= disc.radius()) {
                return disc.colour();
            }
            if (mark instanceof Mark.Line line
                    && distance(line, x, y) < line.stroke().width() / 2) {
                return line.stroke().colour();
            }
        }
        return Palette.SHEET;
    }

    private static Colour mixed(Mark.Tint tint, Colour under) {
        double share = tint.share();
        Colour over = tint.colour();
        return Colour.of(
                (int) Math.round(share * over.red() + (1 - share) * under.red()),
                (int) Math.round(share * over.green() + (1 - share) * under.green()),
                (int) Math.round(share * over.blue() + (1 - share) * under.blue()));
    }

    private static boolean holds(Bounds bounds, double x, double y) {
        return x >= bounds.x() && x <= bounds.right() && y >= bounds.y() && y <= bounds.bottom();
    }

    private static double distance(Mark.Line line, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < line.points().size(); i++) {
            var a = line.points().get(i - 1);
            var b = line.points().get(i);
            nearest = Math.min(nearest, java.awt.geom.Line2D.ptSegDist(a.x(), a.y(), b.x(), b.y(), x, y));
        }
        return nearest;
    }
}
