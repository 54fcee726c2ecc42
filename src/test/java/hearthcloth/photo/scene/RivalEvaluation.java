package hearthcloth.photo.scene;

import hearthcloth.geometry.Point;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Provokes the reader: beside the A4, which is flat, covered, folded, bent, cut off or half in shadow, lies a pale scrap of just
 * its proportions. Counts how often that is taken for the sheet and nothing said. Run by hand, not as a test:
 * {@code RivalEvaluation FIRST_SEED COUNT}.
 */
final class RivalEvaluation {

    private static final int PAPER = 0xf4f4f2;
    private static final int[] PALE = {0xf2f0ea, 0xefe9dc, 0xe6dcc8, 0xf4f4f2, 0xe9e9ea, 0xdfe4e8, 0xf0e4de};
    private static final int[] DARK = {0x1f2a44, 0x7a1f2b, 0x2e5e4e, 0xc7762b};
    private static final List<Floor.Kind> FLOORS = List.of(Floor.Kind.PLAIN, Floor.Kind.WOOD);
    private static final int[] GROUNDS = {0x9c8f7d, 0x8a6642, 0x777b80, 0xb08a5e};

    /** What has become of the sheet. */
    private enum Plight {
        FLAT,
        COVERED,
        FOLDED,
        BENT,
        CUT_OFF,
        SHADED
    }

    /** What the reader said. */
    private enum Answer {
        RIGHT,
        DOUBTED,
        ASKED,
        SILENTLY_WRONG
    }

    private final Random chance;
    private final Plight plight;

    private RivalEvaluation(long seed) {
        chance = new Random(seed);
        plight = Plight.values()[(int) (seed % Plight.values().length)];
    }

    public static void main(String[] args) throws IOException {
        Map<Plight, Map<Answer, Integer>> all = new EnumMap<>(Plight.class);
        long first = Long.parseLong(args[0]);
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            RivalEvaluation one = new RivalEvaluation(seed);
            Answer answer = one.answer(seed);
            all.computeIfAbsent(one.plight, p -> new EnumMap<>(Answer.class)).merge(answer, 1, Integer::sum);
            System.out.println("seed " + seed + " " + one.plight + " " + answer);
        }
        System.out.println(all);
    }

    private Answer answer(long seed) throws IOException {
        Scene scene = scene(seed);
        byte[] jpeg = Evaluation.kept("rival-" + seed, () -> Evaluation.jpeg(scene.photograph(), 0.75f));
        Reading reading = PhotoReader.read(jpeg, ReferenceSheet.A4, ReadingProgress.NONE);
        if (!(reading instanceof Reading.Read read)) {
            return Answer.ASKED;
        }
        double[] at = scene.camera.pictureAt(-95, 0);
        List<Point> corners = read.scale().sheetInPicture();
        double x = corners.stream().mapToDouble(Point::x).average().orElseThrow();
        double y = corners.stream().mapToDouble(Point::y).average().orElseThrow();
        boolean right = Math.hypot(x - at[0], y - at[1]) < 40;
        return right ? Answer.RIGHT : read.sharedDoubts().isEmpty() ? Answer.SILENTLY_WRONG : Answer.DOUBTED;
    }

    private Scene scene(long seed) {
        double turn = 0.5 * (chance.nextDouble() - 0.5);
        List<Scrap> scraps = new ArrayList<>();
        double size = 0.45 + 0.8 * chance.nextDouble();
        scraps.add(sheet(turn));
        if (plight == Plight.COVERED) {
            scraps.add(new Scrap(
                    Scenes.box(new double[] {-95 + 80 * sign(), 130 * sign()}, 70, 60, turn), plain(dark()), 0, false));
        }
        double rivalTurn = chance.nextDouble() * 0.6 - 0.3;
        scraps.add(new Scrap(
                Scenes.box(new double[] {190, 10}, 210 * size, 297 * size, rivalTurn), plain(pale()), 0, false));
        scraps.add(
                new Scrap(Scenes.box(new double[] {40, -235}, 110, 70, chance.nextDouble()), plain(dark()), 0, false));
        double across = 920 + 120 * chance.nextDouble();
        double width = 1680;
        Camera camera = new Camera(
                (int) width,
                1260,
                1260,
                -0.03 * chance.nextDouble(),
                new double[] {plight == Plight.CUT_OFF ? 275 : 20, 0},
                across * 0.75,
                Math.toRadians(18 * chance.nextDouble()),
                0.2 * (chance.nextDouble() - 0.5));
        Floor floor = new Floor(
                FLOORS.get(chance.nextInt(FLOORS.size())), Paint.srgb(GROUNDS[chance.nextInt(GROUNDS.length)]), seed);
        return new Scene(floor, scraps, light(across), camera, 2, seed);
    }

    private Scrap sheet(double turn) {
        double[] at = {-95, 0};
        if (plight == Plight.BENT) {
            List<double[]> corners = Scenes.box(at, 210, 297, turn);
            double[] up = corners.get(chance.nextInt(4));
            up[0] += 9 * (chance.nextDouble() - 0.5);
            up[1] += 9 * (chance.nextDouble() - 0.5);
            return new Scrap(corners, plain(PAPER), 0, true);
        }
        if (plight == Plight.FOLDED) {
            double ear = 30 + 60 * chance.nextDouble();
            List<double[]> box = Scenes.box(at, 210, 297, turn);
            List<double[]> corners = new ArrayList<>(box);
            corners.set(0, between(box.get(0), box.get(1), ear / 210));
            corners.add(between(box.get(0), box.get(3), ear / 297));
            return new Scrap(corners, plain(PAPER), 0, true);
        }
        return new Scrap(Scenes.box(at, 210, 297, turn), plain(PAPER), 0, true);
    }

    private static double[] between(double[] a, double[] b, double share) {
        return new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])};
    }

    private Light light(double across) {
        List<Light.Shadow> shadows = new ArrayList<>();
        if (plight == Plight.SHADED) {
            shadows.add(new Light.Shadow(
                    -230, 60 * sign(), 90 + 60 * chance.nextDouble(), 600, 0.3 + 0.25 * chance.nextDouble(), 0.1));
        }
        double slope = 0.3 * chance.nextDouble() / across;
        return new Light(slope, slope * sign(), shadows, 0.3 * chance.nextDouble(), 0.3);
    }

    private int sign() {
        return chance.nextBoolean() ? 1 : -1;
    }

    private int pale() {
        return PALE[chance.nextInt(PALE.length)];
    }

    private int dark() {
        return DARK[chance.nextInt(DARK.length)];
    }

    private static Weave plain(int colour) {
        return new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, colour);
    }
}
