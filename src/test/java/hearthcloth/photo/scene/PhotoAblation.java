package hearthcloth.photo.scene;

import hearthcloth.Ablation;
import hearthcloth.Changed;
import hearthcloth.Processor;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What each stage of the reader earns: it is left out, or set to its plain form, and the same drawn photographs are read again.
 * Run by {@code ./check ablate photo}, not as a test: {@code PhotoAblation FIRST_SEED COUNT SECONDS [CHANGE...]}. With changes
 * such as {@code edge.lens.waverBow=3} only the reader as it is and the reader so changed are compared.
 */
final class PhotoAblation {

    /** What is left out, and by which values. */
    private static final Map<String, String[]> STAGES = stages();

    private final List<Shot> shots = new ArrayList<>();

    /** A scene and the photograph that was drawn of it. */
    private static final class Shot {
        private final Scene scene;
        private final byte[] jpeg;

        Shot(Scene scene, byte[] jpeg) {
            this.scene = scene;
            this.jpeg = jpeg;
        }
    }

    private static Map<String, String[]> stages() {
        Map<String, String[]> all = new LinkedHashMap<>();
        all.put("no second ground", new String[] {"ground.second.least=2"});
        all.put("joints stay", new String[] {"segment.lines.straight.length=1e9"});
        all.put("a rug's figures stay", new String[] {"segment.rug.figures=1000000000"});
        all.put("neighbours stay one", new String[] {"segment.parting.fragments.covered=2"});
        all.put("no cut at hollows", new String[] {"segment.parting.chords.longest=0"});
        all.put("shade not learnt", new String[] {"edge.colours.shades=", "edge.colours.inShade=0"});
        all.put("sides by colour alone", new String[] {"edge.following.leastShare=2"});
        all.put("sides by sharp step alone", new String[] {
            "edge.following.mostOff=1e9", "edge.following.frayedOff=1e9", "edge.following.mostLoss=1e9"
        });
        all.put("threads not told", new String[] {"edge.placing.fringe=1e9"});
        all.put("blunt corners stay", new String[] {"edge.placing.blunt.shortest=0"});
        all.put("step of colour, not light", new String[] {"edge.steps.toned=0"});
        all.put("lens taken as straight", new String[] {"edge.lens.priorDeviation=1e-9"});
        all.put("usable as the outline", new String[] {"edge.following.unsharp.firm=0"});
        all.put("one polygon, the finest", new String[] {"measuring.tracing.tolerances=2.2"});
        all.put("one polygon, the roughest", new String[] {"measuring.tracing.tolerances=13"});
        all.put("corners cost nothing", new String[] {"measuring.tracing.cornerCost=0"});
        all.put("faint paper not sought", new String[] {"sheet.faint.rows.most=0"});
        all.put("no rival asked about", new String[] {"sheet.rival.area=1e9", "sheet.whiter.area=1e9"});
        return all;
    }

    private PhotoAblation(long first, int count) throws IOException {
        Floor.Kind[] floors = Floor.Kind.values();
        for (int i = 0; i < count; i++) {
            long seed = first + i;
            Scenes.Wish wish = new Scenes.Wish(floors[i % floors.length], 6 * (i % 4), 2.1, 14, Scenes.A4);
            boolean rough = i % 3 == 2;
            Scene scene = rough ? RoughScenes.drawn(seed, wish) : Scenes.drawn(seed, wish);
            byte[] jpeg = Evaluation.kept(
                    "ablation-" + seed + "-" + i,
                    () -> Evaluation.jpeg(
                            rough ? RoughScenes.photograph(scene, RoughScenes.blur(seed)) : scene.photograph(), 0.6f));
            shots.add(new Shot(scene, jpeg));
        }
    }

    public static void main(String[] args) throws IOException {
        PhotoAblation ablation = new PhotoAblation(Long.parseLong(args[0]), Integer.parseInt(args[1]));
        long end = System.nanoTime() + Long.parseLong(args[2]) * 1_000_000_000;
        ReadingParameters standard = ReadingParameters.standard();
        System.out.println(
                "| reader | found | false | side error, p95 of what is allowed | sides lost | doubted | too large"
                        + " without doubt | refused | processor seconds a picture |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        ablation.read(standard); // The first reading of a process is slow, and no part of the table.
        ablation.row("as it is", standard);
        Ablation.rows(
                STAGES,
                Arrays.copyOfRange(args, 3, args.length),
                end,
                (name, changes) -> ablation.row(name, Changed.with(standard, changes)));
    }

    private void read(ReadingParameters parameters) {
        reading(shots.get(0), parameters);
    }

    private static Reading reading(Shot shot, ReadingParameters parameters) {
        return new PhotoReader(parameters)
                .reading(shot.jpeg, ShownSheet.hidden(ReferenceSheet.A4), ReadingProgress.NONE);
    }

    private void row(String name, ReadingParameters parameters) {
        List<Verdict> verdicts = new ArrayList<>();
        int refused = 0;
        int visible = 0;
        double begin = Processor.seconds();
        double judging = 0;
        for (Shot shot : shots) {
            Reading reading = reading(shot, parameters);
            double read = Processor.seconds();
            if (reading instanceof Reading.Read told) {
                verdicts.add(new Verdict(shot.scene, told, name));
            } else {
                refused++;
            }
            visible += (int) shot.scene.scraps.stream()
                    .filter(scrap -> !scrap.isSheet() && shot.scene.contrast(scrap) >= 10)
                    .count();
            judging += Processor.seconds() - read;
        }
        double seconds = (Processor.seconds() - begin - judging) / shots.size();
        double[] errors = verdicts.stream()
                .flatMap(verdict -> verdict.sides.stream())
                .mapToDouble(side -> side.error() / Math.max(1.5, 0.01 * side.trueMm()))
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d of %d | %d | %.2f | %d | %d | %d | %d | %.1f |%n",
                name,
                verdicts.stream().mapToInt(v -> v.found).sum(),
                visible,
                verdicts.stream().mapToInt(v -> v.invented.size()).sum(),
                errors.length == 0 ? 0 : errors[(int) (0.95 * (errors.length - 1))],
                verdicts.stream().mapToInt(v -> v.lostSides).sum(),
                verdicts.stream().mapToInt(v -> v.doubted).sum(),
                verdicts.stream()
                        .flatMap(v -> v.uses.stream())
                        .filter(use -> !use.doubted() && use.overMm() > 0.25)
                        .count(),
                refused,
                seconds);
    }
}
