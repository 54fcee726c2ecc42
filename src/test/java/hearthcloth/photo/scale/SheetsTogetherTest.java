package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two sheets or three on a large floor tell together what one alone cannot, and contradict each other where one is no such sheet. */
final class SheetsTogetherTest {

    private static final PixelImage PICTURE = new PixelImage(1632, 1224);
    private static final LensModel LENS = LensModel.unknown(PICTURE).with(0, 0.004);
    private static final ReferenceSheet SMALLER = ReferenceSheet.of(new Size(Length.mm(202), Length.mm(285)));

    /** What was measured of one floor: lengths far from the first sheet. */
    private record Checks(double errorMm, double giveOrTakeMm, int held, int all) {
        Checks plus(Checks other) {
            return new Checks(
                    errorMm + other.errorMm, giveOrTakeMm + other.giveOrTakeMm, held + other.held, all + other.all);
        }
    }

    private static Pinhole camera(Random chance) {
        double focal = PICTURE.width * (0.70 + 0.12 * chance.nextDouble());
        return new Pinhole(PICTURE, focal, Math.toRadians(20 * chance.nextDouble()), 1900 * focal / PICTURE.width);
    }

    private static FloorScale alone(Pinhole camera, ReferenceSheet real, Point at, Random chance) {
        List<Point> corners = camera.sheet(real, at, chance.nextDouble() * 6, chance);
        FloorPlane.Turned size = new FloorPlane.Turned(210, 297);
        return FloorScale.of(
                new SheetFinder.Found(0, corners, size, 0.001, 0, 0.15),
                ReferenceSheet.A4,
                LENS,
                PICTURE,
                Optional.empty());
    }

    private static List<FloorScale> sheets(Pinhole camera, List<ReferenceSheet> real, Random chance) {
        double[][] places = {{-620, -380}, {600, 350}, {-500, 380}};
        List<FloorScale> out = new ArrayList<>();
        for (int i = 0; i < real.size(); i++) {
            Point at = new Point(places[i][0] + 60 * chance.nextDouble(), places[i][1] + 60 * chance.nextDouble());
            out.add(alone(camera, real.get(i), at, chance));
        }
        return out;
    }

    private static Checks checks(Pinhole camera, FloorScale scale, Random chance) {
        Checks all = new Checks(0, 0, 0, 0);
        for (int k = 0; k < 8; k++) {
            double x = 100 + 500 * chance.nextDouble();
            double y = 600 * (chance.nextDouble() - 0.5);
            double length = 80 + 220 * chance.nextDouble();
            double angle = chance.nextDouble() * 2 * Math.PI;
            Point to = camera.seen(x + length * Math.cos(angle), y + length * Math.sin(angle), 0);
            MeasuredLength read = scale.measured(camera.seen(x, y, 0), to, 0.1);
            double off = Math.abs(read.length().in(Unit.MILLIMETRE) - length);
            double give = read.giveOrTake().in(Unit.MILLIMETRE);
            all = all.plus(new Checks(off, give, off <= give ? 1 : 0, 1));
        }
        return all;
    }

    @Test
    void two_and_three_tell_of_a_large_floor_what_one_cannot_and_what_is_said_holds() {
        Random chance = new Random(41);
        Checks one = new Checks(0, 0, 0, 0);
        Checks two = one;
        Checks three = one;
        for (int i = 0; i < 60; i++) {
            Pinhole camera = camera(chance);
            List<FloorScale> sheets =
                    sheets(camera, List.of(ReferenceSheet.A4, ReferenceSheet.A4, ReferenceSheet.A4), chance);
            long same = chance.nextLong();
            one = one.plus(checks(camera, sheets.get(0), new Random(same)));
            two = two.plus(checks(camera, together(sheets.subList(0, 2)).scale(), new Random(same)));
            three = three.plus(checks(camera, together(sheets).scale(), new Random(same)));
        }
        assertThat(two.errorMm).isLessThan(0.4 * one.errorMm);
        assertThat(three.errorMm).isLessThan(two.errorMm);
        assertThat(two.giveOrTakeMm).isLessThan(0.5 * one.giveOrTakeMm);
        assertThat(two.held).isGreaterThanOrEqualTo((int) (0.95 * two.all));
        assertThat(three.held).isGreaterThanOrEqualTo((int) (0.95 * three.all));
    }

    private static FloorScale.Together together(List<FloorScale> sheets) {
        return FloorScale.together(sheets, ReferenceSheet.A4, Optional.empty());
    }

    @Test
    void sheets_of_one_size_agree_and_one_that_is_four_percent_smaller_is_told() {
        Random chance = new Random(42);
        int contradicted = 0;
        int told = 0;
        for (int i = 0; i < 100; i++) {
            Pinhole camera = camera(chance);
            contradicted += together(sheets(camera, List.of(ReferenceSheet.A4, ReferenceSheet.A4), chance))
                                    .apart()
                            > 0
                    ? 1
                    : 0;
            told += together(sheets(camera, List.of(ReferenceSheet.A4, SMALLER), chance))
                                    .apart()
                            > 0.01
                    ? 1
                    : 0;
        }
        assertThat(contradicted).isLessThanOrEqualTo(2);
        assertThat(told).isGreaterThanOrEqualTo(90);
    }

    @Test
    void all_sheets_are_outlined_and_a_place_is_as_near_as_the_nearest_of_them() {
        Random chance = new Random(43);
        Pinhole camera = camera(chance);
        List<FloorScale> sheets = sheets(camera, List.of(ReferenceSheet.A4, ReferenceSheet.A4), chance);
        FloorScale both = together(sheets).scale().kept().scale();

        assertThat(both.sheetsInPicture())
                .containsExactly(sheets.get(0).sheetInPicture(), sheets.get(1).sheetInPicture());
        Point second = both.onFloor(sheets.get(1).sheetInPicture().get(0));
        assertThat(both.fromSheet(second)).isLessThan(190);
        assertThat(sheets.get(0).fromSheet(second)).isGreaterThan(1000);
    }
}
