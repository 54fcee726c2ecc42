package hearthcloth.photo.scene;

import hearthcloth.measure.Ruler;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.ReadingOverlay;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How many pieces are doubted, and how many of those for nothing, beside shadows and through soft lenses. Run by hand, not as a
 * test: {@code RoughEvaluation FIRST_SEED COUNT MEGAPIXELS [OVERLAY_FOLDER]}.
 */
final class RoughEvaluation {

    private static final List<Floor.Kind> FLOORS = List.of(Floor.Kind.PLAIN, Floor.Kind.WOOD, Floor.Kind.CARPET);

    private final Map<Doubt.Kind, Integer> kinds = new EnumMap<>(Doubt.Kind.class);
    private final List<Verdict> verdicts = new ArrayList<>();
    private int refused;
    private int pieces;
    private int doubted;

    private RoughEvaluation() {}

    public static void main(String[] args) throws IOException {
        RoughEvaluation all = new RoughEvaluation();
        long first = Long.parseLong(args[0]);
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            all.read(seed, args);
        }
        all.report();
    }

    private void read(long seed, String[] args) throws IOException {
        double tilt = 5 * (seed % 5);
        Scene scene = RoughScenes.drawn(
                seed, new Scenes.Wish(FLOORS.get((int) (seed % 3)), tilt, Double.parseDouble(args[2]), 16, Scenes.A4));
        byte[] jpeg = Evaluation.kept(
                "rough-" + seed + "-" + args[2],
                () -> Evaluation.jpeg(RoughScenes.photograph(scene, RoughScenes.blur(seed / 3)), 0.7f));
        Reading reading = PhotoReader.read(jpeg, ReferenceSheet.A4, ReadingProgress.NONE);
        if (!(reading instanceof Reading.Read read)) {
            refused++;
            System.out.println("seed " + seed + " " + reading);
            return;
        }
        pieces += read.pieces().size();
        for (ReadPiece piece : read.pieces()) {
            doubted += piece.isDoubted() ? 1 : 0;
            for (Doubt doubt : piece.doubts()) {
                kinds.merge(doubt.kind(), 1, Integer::sum);
                System.out.println("   " + piece.number() + " " + doubt.kind() + " "
                        + doubt.sentence().english());
            }
        }
        Verdict verdict = new Verdict(scene, read, "seed " + seed);
        verdicts.add(verdict);
        tellByPiece(verdict, read);
        System.out.printf(
                Locale.ROOT,
                "seed %d blur %.1f: %d of %d found, false %s, doubted %d%n",
                seed,
                RoughScenes.blur(seed / 3),
                verdict.found,
                verdict.visible,
                verdict.invented,
                verdict.doubted);
        if (args.length > 3) {
            Files.write(Path.of(args[3], seed + ".png"), ReadingOverlay.png(jpeg, read, Ruler.MILLIMETRES));
        }
    }

    /** For each piece that is doubted or off: why, the worst of its sides, and whether the ± held it. */
    private static void tellByPiece(Verdict verdict, Reading.Read read) {
        for (ReadPiece piece : read.pieces()) {
            List<Verdict.SideCheck> sides = verdict.sides.stream()
                    .filter(side -> side.where().contains("=" + piece.number() + " side"))
                    .toList();
            boolean off = sides.stream().anyMatch(side -> !side.good());
            if (!sides.isEmpty() && (off || piece.isDoubted())) {
                Verdict.SideCheck worst = sides.stream()
                        .max(Comparator.comparingDouble(side -> side.error() / Math.max(1.5, 0.01 * side.trueMm())))
                        .orElseThrow();
                System.out.printf(
                        Locale.ROOT,
                        "   PIECE %s %s %s error %.2f of %.0f, give or take %.2f %s%n",
                        off ? "OFF" : "good",
                        piece.doubts().stream().map(Doubt::kind).toList(),
                        sides.get(0).where().contains("frayed") ? "frayed" : "clean",
                        worst.error(),
                        worst.trueMm(),
                        worst.giveOrTakeMm(),
                        sides.stream().allMatch(Verdict.SideCheck::held) ? "held" : "NOT HELD");
            }
        }
    }

    private void report() {
        List<Verdict.SideCheck> sides =
                verdicts.stream().flatMap(v -> v.sides.stream()).toList();
        List<Verdict.Use> uses = verdicts.stream()
                .flatMap(v -> v.uses.stream())
                .filter(use -> !use.doubted())
                .toList();
        Map<String, Boolean> off = new java.util.HashMap<>();
        Map<String, Boolean> doubt = new java.util.HashMap<>();
        for (Verdict.SideCheck side : sides) {
            String piece = side.where().replaceAll(" side.*", "");
            off.merge(piece, !side.good(), (a, b) -> a || b);
            doubt.put(piece, side.doubted());
        }
        long told = doubt.values().stream().filter(d -> d).count();
        long right = doubt.entrySet().stream()
                .filter(e -> e.getValue() && off.getOrDefault(e.getKey(), false))
                .count();
        long silent = doubt.entrySet().stream()
                .filter(e -> !e.getValue() && off.getOrDefault(e.getKey(), false))
                .count();
        System.out.printf(
                Locale.ROOT,
                "refused %d; found %d of %d; false %d, undoubted %d; pieces read %d, doubted %d (%.1f %%); of doubted really off"
                        + " %d of %d; undoubted but off %d of %d; held %.1f %% of %d sides; undoubted usable too large by over"
                        + " 0.25 mm %d of %d; doubts %s%n",
                refused,
                verdicts.stream().mapToInt(v -> v.found).sum(),
                verdicts.stream().mapToInt(v -> v.visible).sum(),
                verdicts.stream().mapToInt(v -> v.invented.size()).sum(),
                verdicts.stream()
                        .flatMap(v -> v.invented.stream())
                        .filter(one -> !one.endsWith("doubted"))
                        .count(),
                pieces,
                doubted,
                100.0 * doubted / Math.max(1, pieces),
                right,
                told,
                silent,
                doubt.size() - told,
                100.0 * sides.stream().filter(Verdict.SideCheck::held).count() / Math.max(1, sides.size()),
                sides.size(),
                uses.stream().filter(use -> use.overMm() > 0.25).count(),
                uses.size(),
                kinds);
    }
}
