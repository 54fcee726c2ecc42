package hearthcloth.photo.scene;

import hearthcloth.measure.Ruler;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.ReadingOverlay;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/**
 * Reads many drawn photographs and prints how near the truth the readings came. Run by hand, not as a test:
 * {@code Evaluation FIRST_SEED COUNT MEGAPIXELS [OVERLAY_FOLDER [card]]}.
 */
final class Evaluation {

    private static final double[] TILTS = {0, 8, 15, 20, 27, 35};

    private static final List<Floor.Kind> FLOORS = List.of(Floor.Kind.PLAIN, Floor.Kind.WOOD, Floor.Kind.CARPET);

    private Evaluation() {}

    public static void main(String[] args) throws IOException {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        List<Verdict> gentle = new ArrayList<>();
        List<Verdict> steep = new ArrayList<>();
        for (long seed = first; seed < first + count; seed++) {
            double tilt = TILTS[(int) (seed / 3 % TILTS.length)];
            judged(seed, tilt, args).ifPresent((tilt <= 20 ? gentle : steep)::add);
        }
        System.out.println("refused " + (count - gentle.size() - steep.size()) + " of " + count);
        report("tilt to 20", gentle);
        report("tilt over 20", steep);
    }

    private static Optional<Verdict> judged(long seed, double tilt, String[] args) throws IOException {
        boolean a4 = seed / 18 % 2 == 0;
        boolean card = args.length > 4 && args[4].equals("card");
        Floor.Kind floor = FLOORS.get((int) (seed % 3));
        Scenes.Format format = card ? Scenes.CARD : a4 ? Scenes.A4 : Scenes.LETTER;
        ReferenceSheet sheet = card ? ReferenceSheet.CARD : a4 ? ReferenceSheet.A4 : ReferenceSheet.LETTER;
        int pieces = 12 + (int) (seed % 5) * 6;
        Scene scene = Scenes.drawn(seed, new Scenes.Wish(floor, tilt, Double.parseDouble(args[2]), pieces, format));
        byte[] photograph = kept(seed + "-" + args[2] + (card ? "-card" : ""), () -> jpeg(scene.photograph(), 0.6f));
        long start = System.nanoTime();
        Reading reading = PhotoReader.read(photograph, sheet, ReadingProgress.NONE);
        double seconds = (System.nanoTime() - start) / 1e9;
        String name = "seed " + seed + " " + floor + " " + tilt;
        if (!(reading instanceof Reading.Read read)) {
            System.out.println(name + ": " + reading);
            return Optional.empty();
        }
        Verdict verdict = new Verdict(scene, read, name);
        tell(name, verdict, seconds);
        if (args.length > 3) {
            Files.write(Path.of(args[3], seed + ".png"), ReadingOverlay.png(photograph, read, Ruler.MILLIMETRES));
        }
        return Optional.of(verdict);
    }

    /** What draws a photograph. */
    interface Drawing {
        byte[] jpeg() throws IOException;
    }

    /** Drawn once: kept as a file in the folder that the property {@code drawn} names, if it names one. */
    static byte[] kept(String key, Drawing drawing) throws IOException {
        String folder = System.getProperty("drawn");
        Path kept = folder == null ? null : Path.of(folder, key + ".jpg");
        if (kept != null && Files.exists(kept)) {
            return Files.readAllBytes(kept);
        }
        byte[] photograph = drawing.jpeg();
        if (kept != null) {
            Files.write(kept, photograph);
        }
        return photograph;
    }

    private static void tell(String name, Verdict verdict, double seconds) {
        System.out.printf(
                Locale.ROOT,
                "%s: %d/%d found, %d false, %.2f s, bad sides %d/%d, not held %d, lost %d%n",
                name,
                verdict.found,
                verdict.visible,
                verdict.invented.size(),
                seconds,
                verdict.sides.stream().filter(s -> !s.good()).count(),
                verdict.sides.size(),
                verdict.sides.stream().filter(s -> !s.held()).count(),
                verdict.lostSides);
        verdict.missed.forEach(m -> System.out.println("   missed " + m));
        verdict.invented.forEach(m -> System.out.println("   false " + m));
        verdict.uses.stream().filter(u -> u.overMm() > 0.1).forEach(u -> System.out.println("   over " + u));
        verdict.sides.stream().filter(s -> !s.good()).forEach(s -> System.out.println("   bad " + s));
    }

    private static void report(String title, List<Verdict> verdicts) {
        List<Verdict.SideCheck> sides =
                verdicts.stream().flatMap(v -> v.sides.stream()).toList();
        List<Verdict.Use> uses = verdicts.stream().flatMap(v -> v.uses.stream()).toList();
        int visible = verdicts.stream().mapToInt(v -> v.visible).sum();
        int found = verdicts.stream().mapToInt(v -> v.found).sum();
        int invented = verdicts.stream().mapToInt(v -> v.invented.size()).sum();
        int lost = verdicts.stream().mapToInt(v -> v.lostSides).sum();
        System.out.printf(
                Locale.ROOT,
                "== %s: %d pictures, found %d of %d (%.2f %%), false %d (%.2f %%), doubted %d%n",
                title,
                verdicts.size(),
                found,
                visible,
                100.0 * found / visible,
                invented,
                100.0 * invented / visible,
                verdicts.stream().mapToInt(v -> v.doubted).sum());
        sides("all", sides, lost);
        sides("undoubted", sides.stream().filter(s -> !s.doubted()).toList(), lost);
        sides("frayed", sides.stream().filter(s -> s.where().contains("frayed")).toList(), 0);
        sides(
                "clean plain",
                sides.stream().filter(s -> s.where().endsWith("clean PLAIN")).toList(),
                0);
        sides(
                "clean figured",
                sides.stream()
                        .filter(s -> s.where().contains("clean") && !s.where().endsWith("PLAIN"))
                        .toList(),
                0);
        uses("all", uses);
        uses("undoubted", uses.stream().filter(u -> !u.doubted()).toList());
    }

    private static void sides(String title, List<Verdict.SideCheck> sides, int lost) {
        double[] errors =
                sides.stream().mapToDouble(Verdict.SideCheck::error).sorted().toArray();
        double[] plus = sides.stream()
                .mapToDouble(Verdict.SideCheck::giveOrTakeMm)
                .sorted()
                .toArray();
        double[] ratio = sides.stream()
                .mapToDouble(s -> s.error() / Math.max(1.5, 0.01 * s.trueMm()))
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "   %s sides %d (lost %d): error median %.2f p95 %.2f p99 %.2f mm; over allowance p95 %.2f; within goal %.2f %%; "
                        + "held %.2f %%; give or take median %.2f p95 %.2f mm%n",
                title,
                sides.size(),
                lost,
                at(errors, 0.5),
                at(errors, 0.95),
                at(errors, 0.99),
                at(ratio, 0.95),
                100.0 * sides.stream().filter(Verdict.SideCheck::good).count() / sides.size(),
                100.0 * sides.stream().filter(Verdict.SideCheck::held).count() / sides.size(),
                at(plus, 0.5),
                at(plus, 0.95));
    }

    private static void uses(String title, List<Verdict.Use> uses) {
        double[] share = uses.stream().mapToDouble(Verdict.Use::share).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "   %s usable: share of best p5 %.4f median %.4f; below 97 %% %.2f %%; sticks out over 0.1 mm %.2f %%, over 0.5 mm %.2f %%, most %.2f mm%n",
                title,
                at(share, 0.05),
                at(share, 0.5),
                100.0 * uses.stream().filter(u -> u.share() < 0.97).count() / uses.size(),
                100.0 * uses.stream().filter(u -> u.overMm() > 0.1).count() / uses.size(),
                100.0 * uses.stream().filter(u -> u.overMm() > 0.5).count() / uses.size(),
                uses.stream().mapToDouble(Verdict.Use::overMm).max().orElse(0));
    }

    private static double at(double[] sorted, double share) {
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
    }

    static byte[] jpeg(BufferedImage image, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(quality);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        }
        writer.dispose();
        return bytes.toByteArray();
    }
}
