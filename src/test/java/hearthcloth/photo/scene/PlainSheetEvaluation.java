package hearthcloth.photo.scene;

import hearthcloth.geometry.Point;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How often a plain sheet of A4 that lies there whole and in plain view is refused, on floors as they fail: joints, chips, veins,
 * folds, beside the edges of shadows. Each reason is printed, to be looked at. Run by hand, not as a test:
 * {@code PlainSheetEvaluation FIRST_SEED COUNT MEGAPIXELS}.
 */
final class PlainSheetEvaluation {

    private static final List<Floor.Kind> FLOORS = List.of(
            Floor.Kind.HERRINGBONE,
            Floor.Kind.TILES,
            Floor.Kind.CHIPS,
            Floor.Kind.CREASED,
            Floor.Kind.WOOD,
            Floor.Kind.MAT);

    private PlainSheetEvaluation() {}

    /** What became of the pictures on one floor. */
    private record Count(int all, int refused, int wrong, int found, int visible, int invented, int silent) {

        Count plus(Count o) {
            return new Count(
                    all + o.all,
                    refused + o.refused,
                    wrong + o.wrong,
                    found + o.found,
                    visible + o.visible,
                    invented + o.invented,
                    silent + o.silent);
        }
    }

    public static void main(String[] args) throws IOException {
        Map<Floor.Kind, Count> counts = new EnumMap<>(Floor.Kind.class);
        long first = Long.parseLong(args[0]);
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            Floor.Kind floor = FLOORS.get((int) (seed % FLOORS.size()));
            counts.merge(floor, read(seed, floor, args[2]), Count::plus);
        }
        counts.forEach((floor, count) -> System.out.println(floor + " " + count));
        System.out.println("ALL " + counts.values().stream().reduce(Count::plus).orElseThrow());
    }

    private static Count read(long seed, Floor.Kind floor, String megapixels) throws IOException {
        Scenes.Wish wish = new Scenes.Wish(floor, 5 * (seed / 6 % 5), Double.parseDouble(megapixels), 12, Scenes.A4);
        Scene scene = RoughScenes.drawn(seed, wish);
        byte[] jpeg = Evaluation.kept(
                "plain-" + seed + "-" + megapixels,
                () -> Evaluation.jpeg(RoughScenes.photograph(scene, RoughScenes.blur(seed / FLOORS.size())), 0.7f));
        Reading reading = PhotoReader.read(jpeg, ReferenceSheet.A4, ReadingProgress.NONE);
        if (!(reading instanceof Reading.Read read)) {
            System.out.println("seed " + seed + " " + floor + " " + reading);
            return new Count(1, 1, 0, 0, 0, 0, 0);
        }
        boolean wrong = isWrong(scene, read);
        Verdict verdict = new Verdict(scene, read, "seed " + seed);
        System.out.printf(
                Locale.ROOT,
                "seed %d %s: %d of %d found, false %s%s%n",
                seed,
                floor,
                verdict.found,
                verdict.visible,
                verdict.invented,
                wrong ? " WRONG SHEET" : "");
        int silent = (int) verdict.invented.stream()
                .filter(one -> !one.endsWith("doubted"))
                .count();
        return new Count(1, 0, wrong ? 1 : 0, verdict.found, verdict.visible, verdict.invented.size(), silent);
    }

    /** Whether what was taken for the sheet lies elsewhere. */
    static boolean isWrong(Scene scene, Reading.Read read) {
        Scrap sheet = scene.scraps.stream().filter(Scrap::isSheet).findFirst().orElseThrow();
        Point middle = middle(read.scale().sheetInPicture());
        double[] at = scene.camera.floorAt(middle.x(), middle.y());
        return !sheet.holds(at[0], at[1]);
    }

    private static Point middle(List<Point> corners) {
        return new Point(
                corners.stream().mapToDouble(Point::x).average().orElseThrow(),
                corners.stream().mapToDouble(Point::y).average().orElseThrow());
    }
}
