package hearthcloth.photo.scene;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.PrintedSheetParameters;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.scale.MarkedSheet;
import hearthcloth.photo.scale.MeasuringSheetFinder;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * How surely the measuring sheet is found, and how well lengths on the floor about it are measured by it. Run by hand:
 * {@code MeasuringSheetEvaluation FIRST COUNT MEGAPIXELS MOST_TILT [MOST_LIFT_MM]}. Of each picture only the sheet is drawn.
 */
final class MeasuringSheetEvaluation {

    private static final int LENGTHS = 12;

    private MeasuringSheetEvaluation() {}

    /** A length as it is and as it was measured. */
    private record Check(PrintedScenes.Lying lying, double trueMm, MeasuredLength read) {
        double error() {
            return Math.abs(read.length().in(Unit.MILLIMETRE) - trueMm);
        }

        boolean isHeld() {
            return error() <= read.giveOrTake().in(Unit.MILLIMETRE);
        }
    }

    public static void main(String[] args) {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        double lift = args.length > 4 ? Double.parseDouble(args[4]) : 12;
        BufferedImage a4 = PrintedScenes.print(Paper.A4);
        BufferedImage letter = PrintedScenes.print(Paper.LETTER);
        List<Check> checks = new ArrayList<>();
        int missed = 0;
        double ms = 0;
        for (long seed = first; seed < first + count; seed++) {
            PrintedScenes.Lying lying = List.of(PrintedScenes.Lying.values()).get((int) (seed % 5));
            double tilt = Double.parseDouble(args[3]) * (seed / 5 % 8) / 7;
            Scene scene = PrintedScenes.drawn(
                    seed,
                    seed % 2 == 0 ? a4 : letter,
                    new PrintedScenes.Wish(lying, tilt, Double.parseDouble(args[2]), lift, 0));
            PixelImage picture = pixels(scene.ofSheets(60));
            long start = System.nanoTime();
            List<MarkedSheet> found = MeasuringSheetFinder.in(
                    picture,
                    LabThumbnail.of(picture),
                    true,
                    PrintedSheetParameters.standard(),
                    EdgeParameters.standard().steps());
            ms += (System.nanoTime() - start) / 1e6 / count;
            if (found.isEmpty()) {
                missed++;
                System.out.println("missed " + seed + " " + lying + " " + tilt);
                continue;
            }
            LensModel lens = LensModel.unknown(picture);
            FloorScale scale = FloorScale.of(found.get(0), ReferenceSheet.MEASURING, lens, picture, Optional.empty());
            List<Check> own = checks(scene, scale, lying, seed);
            checks.addAll(own);
            double worst = own.stream()
                    .mapToDouble(c -> c.error() / Math.max(1, c.trueMm() * 0.007))
                    .max()
                    .orElse(0);
            System.out.printf(
                    Locale.ROOT,
                    "%d %s tilt %.0f marks %d worst %.2f held %d of %d%n",
                    seed,
                    lying,
                    tilt,
                    found.get(0).marks().size() / 4,
                    worst,
                    own.stream().filter(Check::isHeld).count(),
                    own.size());
        }
        System.out.printf(Locale.ROOT, "missed %d of %d, %.0f ms%n", missed, count, ms);
        for (PrintedScenes.Lying lying : PrintedScenes.Lying.values()) {
            tell(lying.name(), checks.stream().filter(c -> c.lying() == lying).toList());
        }
        tell("ALL", checks);
    }

    private static void tell(String name, List<Check> checks) {
        double[] ratio = checks.stream()
                .mapToDouble(c -> c.error() / Math.max(1, c.trueMm() * 0.007))
                .sorted()
                .toArray();
        double[] give = checks.stream()
                .mapToDouble(c -> c.read().giveOrTake().in(Unit.MILLIMETRE) / c.trueMm() * 100)
                .sorted()
                .toArray();
        if (ratio.length > 0) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d lengths; error over the larger of 1 mm and 0.7 %%: median %.2f p95 %.2f; held %.1f %%; ± median %.2f p95 %.2f %%%n",
                    name,
                    ratio.length,
                    ratio[ratio.length / 2],
                    ratio[ratio.length * 95 / 100],
                    100.0 * checks.stream().filter(Check::isHeld).count() / checks.size(),
                    give[give.length / 2],
                    give[give.length * 95 / 100]);
        }
    }

    /** Lengths between places on the floor that show in the picture, none farther from the sheet than 60 cm. */
    private static List<Check> checks(Scene scene, FloorScale scale, PrintedScenes.Lying lying, long seed) {
        Random chance = new Random(seed);
        Point middle = scale.inPicture(scale.sheetMiddle());
        double[] at = scene.camera.floorAt(middle.x(), middle.y());
        List<Check> out = new ArrayList<>();
        while (out.size() < LENGTHS) {
            double[] one = {at[0] + (chance.nextDouble() - 0.5) * 1000, at[1] + (chance.nextDouble() - 0.5) * 1000};
            double angle = chance.nextDouble() * 2 * Math.PI;
            double length = 60 + 240 * chance.nextDouble();
            double[] two = {one[0] + length * Math.cos(angle), one[1] + length * Math.sin(angle)};
            double[] a = scene.camera.pictureAt(one[0], one[1]);
            double[] b = scene.camera.pictureAt(two[0], two[1]);
            if (isIn(scene, a) && isIn(scene, b)) {
                out.add(new Check(lying, length, scale.measured(new Point(a[0], a[1]), new Point(b[0], b[1]), 0.05)));
            }
        }
        return out;
    }

    private static boolean isIn(Scene scene, double[] at) {
        return at[0] > 0 && at[1] > 0 && at[0] < scene.camera.width && at[1] < scene.camera.height;
    }

    private static PixelImage pixels(BufferedImage image) {
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        return new PixelImage(image.getWidth(), image.getHeight(), bytes);
    }
}
