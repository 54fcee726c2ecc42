package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.ReadingOverlay;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Runs the reader over scenes it was not tuned on and prints how it did.
 *
 * <p>{@code HeldAsideEvaluation 1 40 [folder] [awkward] [12mp]}: seeds from and to; a folder for each photograph and what
 * was read of it.
 */
public final class HeldAsideEvaluation {

    private static final double FLAT = 20;

    /** One scene and all that came of it. */
    private record Scene(Truth truth, String refused, List<Judged> judged, List<Integer> falseOnes, String times) {
        boolean isUsual() {
            return truth.setting().tiltDeg() <= FLAT
                    && (truth.sheet().equals(ReferenceSheet.A4) || truth.sheet().equals(ReferenceSheet.LETTER));
        }
    }

    private final List<Scene> scenes = new ArrayList<>();
    private final List<Double> drawing = new ArrayList<>();
    private final List<Double> reading = new ArrayList<>();

    private HeldAsideEvaluation() {}

    public static void main(String[] args) throws IOException {
        List<String> words = List.of(args);
        boolean awkward = words.contains("awkward");
        var megapixels = words.stream().filter(w -> w.endsWith("mp")).findFirst();
        Path folder = words.stream()
                .skip(2)
                .filter(w -> !w.equals("awkward") && !w.endsWith("mp"))
                .findFirst()
                .map(Path::of)
                .orElse(null);
        var evaluation = new HeldAsideEvaluation();
        for (int seed = Integer.parseInt(args[0]); seed <= Integer.parseInt(args[1]); seed++) {
            Shot shot = awkward
                    ? HeldAside.awkward(seed)
                    : megapixels.isPresent()
                            ? HeldAside.scene(
                                    seed, Double.parseDouble(megapixels.get().replace("mp", "")))
                            : HeldAside.scene(seed);
            evaluation.add(shot, folder, (awkward ? "awkward-" : "") + seed);
        }
        evaluation.report();
    }

    /** Drawn once: kept as a file in the folder that the property {@code drawn} names, if it names one. */
    private static byte[] drawn(Shot shot, String name) throws IOException {
        String folder = System.getProperty("drawn");
        Path kept = folder == null ? null : Path.of(folder, name + ".jpg");
        if (kept != null && Files.exists(kept)) {
            return Files.readAllBytes(kept);
        }
        byte[] photograph = shot.jpeg();
        if (kept != null) {
            Files.write(kept, photograph);
        }
        return photograph;
    }

    private void add(Shot shot, @Nullable Path folder, String name) throws IOException {
        long begin = System.nanoTime();
        byte[] photograph = drawn(shot, name);
        long drawn = System.nanoTime();
        Reading reading = PhotoReader.read(photograph, shot.truth().sheet(), ReadingProgress.NONE);
        long done = System.nanoTime();
        this.drawing.add((drawn - begin) / 1e9);
        this.reading.add((done - drawn) / 1e9);
        String times =
                String.format(Locale.ROOT, "drawn %.1f s, read %.1f s", (drawn - begin) / 1e9, (done - drawn) / 1e9);
        if (folder != null) {
            Files.createDirectories(folder);
            Files.write(folder.resolve(name + ".jpg"), photograph);
        }
        Scene scene;
        if (reading instanceof Reading.Read read) {
            Verdict verdict = new Verdict(shot, read);
            List<Judged> judged = verdict.judged();
            scene = new Scene(shot.truth(), "", judged, verdict.falseOnes(), times);
            if (folder != null) {
                Files.write(
                        folder.resolve(name + "-read.png"), ReadingOverlay.png(photograph, read, Ruler.MILLIMETRES));
            }
        } else {
            scene = new Scene(
                    shot.truth(), ((Reading.Refused) reading).reason().english(), List.of(), List.of(), times);
        }
        scenes.add(scene);
        print(scene, shot);
    }

    private static void print(Scene scene, Shot shot) {
        Truth.Setting setting = scene.truth().setting();
        System.out.printf(
                Locale.ROOT,
                "seed %d: %s, %s, %s, %d pieces; %s%n",
                setting.seed(),
                setting.ground(),
                scene.truth().sheet().name(),
                setting.taken(),
                scene.truth().pieces().size(),
                scene.times());
        if (!scene.refused().isEmpty()) {
            System.out.println("   REFUSED: " + scene.refused());
        }
        if (!scene.falseOnes().isEmpty()) {
            System.out.println("   FALSE: pieces " + scene.falseOnes() + " of the overlay");
        }
        for (int i = 0; i < scene.judged().size(); i++) {
            String wrong = wrong(scene.judged().get(i));
            if (!wrong.isEmpty()) {
                System.out.println(
                        "   piece " + i + " " + place(scene.judged().get(i).truth(), shot) + wrong);
            }
        }
    }

    private static String place(TruePiece piece, Shot shot) {
        var at = Rim.polygon(piece.rim()).getCentroid().getCoordinate();
        var pixel = shot.inPicture(new Point(at.x, at.y));
        return String.format(
                Locale.ROOT,
                "at (%.0f, %.0f) %s %s %s ΔE %.0f %s:",
                pixel.x(),
                pixel.y(),
                piece.made().form(),
                piece.made().edge(),
                piece.made().figure(),
                piece.contrast(),
                piece.troubles().isEmpty() ? "" : piece.troubles());
    }

    private static String wrong(Judged judged) {
        if (!judged.found()) {
            return judged.isClear() ? " NOT FOUND" : " not found (faint)";
        }
        StringBuilder text = new StringBuilder();
        if (!judged.corresponds()) {
            text.append(" corners differ;");
        } else if (judged.worstSide() > 1) {
            text.append(judged.sides().stream()
                    .filter(s -> s.ofAllowed() > 1)
                    .map(s -> String.format(
                            Locale.ROOT, " side %.1f read %.1f ± %.1f;", s.truth(), s.read(), s.giveOrTake()))
                    .collect(Collectors.joining()));
        }
        if (judged.usable().overhang() > 0.3) {
            text.append(String.format(
                    Locale.ROOT, " usable sticks out %.1f mm;", judged.usable().overhang()));
        }
        return text.isEmpty()
                ? ""
                : text + (judged.doubts().isEmpty() ? " NOT DOUBTED" : " doubted " + judged.doubts());
    }

    private void report() {
        List<Judged> all = scenes.stream().flatMap(s -> s.judged().stream()).toList();
        List<Judged> usual = scenes.stream()
                .filter(Scene::isUsual)
                .flatMap(s -> s.judged().stream())
                .toList();
        long truths = all.size();
        long wrong = scenes.stream().mapToLong(s -> s.falseOnes().size()).sum();
        System.out.printf(
                Locale.ROOT,
                "%n%d scenes, %d refused; %d true pieces in the others, %d false (%.3f a true piece)%n",
                scenes.size(),
                scenes.stream().filter(s -> !s.refused().isEmpty()).count(),
                truths,
                wrong,
                truths == 0 ? 0 : (double) wrong / truths);
        System.out.printf(
                Locale.ROOT,
                "drawing %.1f s, reading %.1f s a picture in the middle, %.1f s at most%n",
                Tally.part(drawing, 0.5, d -> d),
                Tally.part(reading, 0.5, d -> d),
                Tally.part(reading, 1, d -> d));
        System.out.println("""

                clear: pieces with ΔE >= 10; found of them; sides: of found pieces whose corners correspond (corn%)
                p50 to max: side error as a share of the larger of 1.5 mm and 1 % of the side; mm95: in mm
                held: the stated ± holds the truth; large: usable rectangles that cannot be laid in the true piece,
                how far they stick out; area: of the best rectangle, the middle""");
        System.out.println("\nTilt up to 20°, A4 or Letter");
        System.out.print(Tally.table(usual, ways()));
        both(usual);
        System.out.println("\nEverything");
        System.out.print(Tally.table(all, ways()));
        both(all);
        doubts(all);
    }

    private Map<String, Function<TruePiece, String>> ways() {
        Map<String, Function<TruePiece, String>> ways = new LinkedHashMap<>();
        Map<TruePiece, String> grounds = new HashMap<>();
        scenes.forEach(s -> s.judged()
                .forEach(
                        j -> grounds.put(j.truth(), s.truth().setting().ground().name())));
        ways.put("ground", t -> String.valueOf(grounds.get(t)));
        ways.put("fabric", t -> t.made().figure());
        ways.put("shape", t -> t.made().form().name());
        ways.put("edge", t -> t.made().edge().name());
        ways.put("ΔE", t -> t.contrast() < 10 ? "under 10" : t.contrast() < 20 ? "10 to 20" : "20 and more");
        return ways;
    }

    private static void both(List<Judged> all) {
        List<Judged.SideError> sides = all.stream()
                .filter(Judged::isClear)
                .flatMap(j -> j.sides().stream())
                .toList();
        System.out.printf(
                Locale.ROOT,
                "sides by the stricter of 1.5 mm and 1 %%: p50 %.2f p90 %.2f p95 %.2f max %.2f%n",
                Tally.part(sides, 0.5, Judged.SideError::ofBoth),
                Tally.part(sides, 0.9, Judged.SideError::ofBoth),
                Tally.part(sides, 0.95, Judged.SideError::ofBoth),
                Tally.part(sides, 1, Judged.SideError::ofBoth));
    }

    private static void doubts(List<Judged> all) {
        List<Judged> found = all.stream().filter(Judged::found).toList();
        Map<Boolean, List<Judged>> bad = found.stream()
                .collect(Collectors.partitioningBy(
                        j -> !j.corresponds() || j.worstSide() > 1 || j.usable().overhang() > 0.3));
        bad.forEach((is, some) -> System.out.printf(
                Locale.ROOT,
                "%s: %d, of them doubted %d%n",
                is ? "read wrongly (corners, a side beyond what is allowed, usable out by 0.3 mm)" : "read well",
                some.size(),
                some.stream().filter(j -> !j.doubts().isEmpty()).count()));
        Map<String, Long> kinds = found.stream()
                .sorted(Comparator.comparing(Judged::doubts))
                .collect(Collectors.groupingBy(Judged::doubts, LinkedHashMap::new, Collectors.counting()));
        System.out.println("doubts: " + kinds);
    }
}
