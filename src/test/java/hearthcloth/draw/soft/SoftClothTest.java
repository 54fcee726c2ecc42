package hearthcloth.draw.soft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Dots;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A cloth drawn dot by dot: what is nearer hides what is farther, each side shows its face, and its shadow lies beside it. */
class SoftClothTest {

    private static final Sight ABOVE = new Sight(new Vector(0, 0, 1), new Vector(1, 0, 0), new Vector(0, 1, 0));
    private static final Sight BELOW = new Sight(new Vector(0, 0, -1), new Vector(1, 0, 0), new Vector(0, -1, 0));
    private static final Shape NOTHING = Shape.of(List.of(), List.of(), List.of());

    /** Half red, half green; and all blue. */
    private static final Skin HALVES = Skin.of(
            new Sketch()
                    .fill(new Bounds(0, 0, 5, 10), Colour.of(0xff0000))
                    .fill(new Bounds(5, 0, 5, 10), Colour.of(0x00ff00))
                    .finished("halves", 10, 10),
            64);

    private static final Skin BLUE = Skin.of(plain(0x0000ff), 64);

    private static Picture plain(int colour) {
        return new Sketch().fill(new Bounds(0, 0, 10, 10), Colour.of(colour)).finished("plain", 10, 10);
    }

    /** A square of 100 mm, so high over the middle of the table, its normals upwards. */
    private static Shape square(double height) {
        return Shape.of(
                List.of(
                        new Vector(-50, -50, height),
                        new Vector(50, -50, height),
                        new Vector(50, 50, height),
                        new Vector(-50, 50, height)),
                List.of(new Point(0, 1), new Point(1, 1), new Point(1, 0), new Point(0, 0)),
                List.of(0, 1, 2, 0, 2, 3));
    }

    private static Dots drawn(SoftCloth cloth, Sight sight) {
        return cloth.drawn(sight, new Bounds(-100, -100, 200, 200), 0.5);
    }

    private static int share(int argb, int down) {
        return argb >> down & 0xff;
    }

    @Test
    void each_side_shows_its_own_face() {
        SoftCloth cloth = new SoftCloth(square(0), NOTHING, BLUE, HALVES);
        Dots above = drawn(cloth, ABOVE);
        assertThat(share(above.argb(35, 50), 16)).isGreaterThan(200);
        assertThat(share(above.argb(35, 50), 8)).isZero();
        assertThat(share(above.argb(65, 50), 8)).isGreaterThan(200);
        Dots below = drawn(cloth, BELOW);
        assertThat(share(below.argb(50, 50), 0)).isGreaterThan(80);
        assertThat(share(below.argb(50, 50), 16)).isZero();
        // what looks away from the window is darker
        assertThat(share(below.argb(50, 50), 0)).isLessThan(share(above.argb(35, 50), 16));
    }

    @Test
    void its_outline_is_where_it_is_to_a_dot_and_smooth() {
        Dots dots = drawn(new SoftCloth(square(0), NOTHING, BLUE, BLUE), ABOVE);
        double covered = 0;
        for (int y = 0; y < dots.height(); y++) {
            for (int x = 0; x < dots.width(); x++) {
                covered += share(dots.argb(x, y), 0) > 0 ? share(dots.argb(x, y), 24) / 255.0 : 0;
            }
        }
        assertThat(covered).isCloseTo(2500, within(60.0));
    }

    @Test
    void what_is_nearer_hides_what_is_farther() {
        Shape over = square(30);
        SoftCloth cloth = new SoftCloth(square(0), over, HALVES, BLUE);
        assertThat(share(drawn(cloth, ABOVE).argb(35, 50), 16)).isGreaterThan(200);
        assertThat(share(drawn(cloth, ABOVE).argb(35, 50), 0)).isZero();
    }

    @Test
    void a_shadow_falls_away_from_the_window_and_is_black_that_lets_shine_through() {
        // standing on the table at one edge, so that the rest is high over it
        Shape slope = Shape.of(
                List.of(new Vector(-50, 0, 0), new Vector(50, 0, 0), new Vector(50, 1, 80), new Vector(-50, 1, 80)),
                List.of(new Point(0, 1), new Point(1, 1), new Point(1, 0), new Point(0, 0)),
                List.of(0, 1, 2, 0, 2, 3));
        Dots dots = drawn(new SoftCloth(slope, NOTHING, BLUE, BLUE), ABOVE);
        int behind = dots.argb(55, 45);
        int before = dots.argb(45, 60);
        assertThat(share(behind, 24)).isBetween(8, 110);
        assertThat(behind & 0xffffff).isZero();
        assertThat(share(before, 24)).isLessThan(share(behind, 24));
    }

    @Test
    void a_repeat_is_laid_as_often_as_it_goes_in() {
        Picture tile = new Sketch()
                .fill(new Bounds(0, 0, 2, 1), Colour.WHITE)
                .fill(new Bounds(0, 0, 1, 1), Colour.BLACK)
                .finished("stripe", 2, 1);
        Sketch sketch = new Sketch();
        sketch.add(new Mark.Figured(new Bounds(0, 0, 10, 10).outline(), tile, Affine.scaled(1, 0, 0)));
        Painting painting = Painting.of(sketch.finished("striped", 10, 10), 100, 100);
        int changes = 0;
        for (int x = 1; x < 100; x++) {
            boolean isDark = painting.dots[4 * (5000 + x)] < 0.5;
            boolean wasDark = painting.dots[4 * (5000 + x - 1)] < 0.5;
            changes += isDark == wasDark ? 0 : 1;
        }
        assertThat(changes).isEqualTo(9);
    }
}
