package hearthcloth.photo.scale;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plain paper or a card of which one corner stands up to 8 mm off the floor: what is said of each length holds the truth all the same. */
final class BentReferenceTest {

    private static final int WIDTH = 1632;
    private static final int HEIGHT = 1224;
    private static final PixelImage PICTURE = new PixelImage(WIDTH, HEIGHT);

    /** Who of how many. */
    private record Count(int held, int all) {}

    private static Count held(ReferenceSheet sheet, double mostLiftMm, int pictures, long seed) {
        Random chance = new Random(seed);
        LensModel lens = LensModel.unknown(PICTURE).with(0, 0.003);
        SheetFinder finder =
                new SheetFinder(PICTURE, LabThumbnail.of(PICTURE), lens, Optional.empty(), SheetParameters.standard());
        int held = 0;
        int all = 0;
        for (int i = 0; i < pictures; i++) {
            double focal = WIDTH * (0.70 + 0.12 * chance.nextDouble());
            double across = sheet.white() ? 700 + 600 * chance.nextDouble() : 350 + 250 * chance.nextDouble();
            Pinhole camera =
                    new Pinhole(PICTURE, focal, Math.toRadians(25 * chance.nextDouble()), across * focal / WIDTH);
            List<Point> corners = corners(sheet, camera, across, mostLiftMm, chance);
            FloorPlane.Turned size = new FloorPlane.Turned(sheet.widthMm(), sheet.heightMm());
            double skew = finder.skew(new SheetFinder.Found(0, corners, size, 0, 0, 0.2), sheet);
            SheetFinder.Found found = new SheetFinder.Found(0, corners, size, skew, 0, 0.2);
            if (skew > finder.usualSkew(found)) {
                continue; // Every piece is doubted, or the picture is refused.
            }
            FloorScale scale = FloorScale.of(found, sheet, lens, PICTURE, Optional.empty());
            for (int k = 0; k < 6; k++) {
                all++;
                held += isHeld(camera, scale, across, chance) ? 1 : 0;
            }
        }
        return new Count(held, all);
    }

    private static List<Point> corners(
            ReferenceSheet sheet, Pinhole camera, double across, double mostLiftMm, Random chance) {
        double turn = chance.nextDouble() * 2 * Math.PI;
        double x = (chance.nextDouble() - 0.5) * across * 0.6;
        double y = (chance.nextDouble() - 0.5) * across * 0.45;
        int up = chance.nextInt(4);
        double lift = mostLiftMm * chance.nextDouble();
        List<Point> out = new ArrayList<>();
        double w = sheet.widthMm() / 2;
        double h = sheet.heightMm() / 2;
        double[][] places = {{-w, h}, {w, h}, {w, -h}, {-w, -h}};
        for (int i = 0; i < 4; i++) {
            Point seen = camera.seen(
                    x + places[i][0] * Math.cos(turn) - places[i][1] * Math.sin(turn),
                    y + places[i][0] * Math.sin(turn) + places[i][1] * Math.cos(turn),
                    i == up ? lift : 0);
            out.add(seen.plus(0.15 * chance.nextGaussian(), 0.15 * chance.nextGaussian()));
        }
        return out;
    }

    private static boolean isHeld(Pinhole camera, FloorScale scale, double across, Random chance) {
        double x = (chance.nextDouble() - 0.5) * across * 0.7;
        double y = (chance.nextDouble() - 0.5) * across * 0.5;
        double length = 60 + 200 * chance.nextDouble();
        double angle = chance.nextDouble() * 2 * Math.PI;
        MeasuredLength read = scale.measured(
                camera.seen(x, y, 0), camera.seen(x + length * Math.cos(angle), y + length * Math.sin(angle), 0), 0.1);
        return Math.abs(read.length().in(Unit.MILLIMETRE) - length)
                <= read.giveOrTake().in(Unit.MILLIMETRE);
    }

    @Test
    void of_lengths_beside_paper_with_a_corner_up_to_8_mm_off_the_floor_19_in_20_are_held() {
        Count count = held(ReferenceSheet.A4, 8, 400, 5);
        assertThat(count.all()).isGreaterThan(1800);
        assertThat(count.held()).isGreaterThanOrEqualTo((int) (0.95 * count.all()));
    }

    @Test
    void beside_flat_paper_nearly_all_are_held() {
        Count count = held(ReferenceSheet.A4, 0, 200, 6);
        assertThat(count.held()).isGreaterThanOrEqualTo((int) (0.99 * count.all()));
    }

    @Test
    void of_lengths_beside_a_card_with_a_corner_up_to_8_mm_off_the_floor_19_in_20_are_held() {
        Count count = held(ReferenceSheet.CARD, 8, 600, 7);
        assertThat(count.all()).isGreaterThan(600);
        assertThat(count.held()).isGreaterThanOrEqualTo((int) (0.95 * count.all()));
    }
}
