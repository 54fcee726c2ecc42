package hearthcloth.photo.scene;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** A floor with scraps and a reference sheet, its light and its camera: everything a photograph is drawn from. */
final class Scene {

    private static final double CELL_MM = 20;
    private static final int[] NOTHING = {};

    final Floor floor;
    final List<Scrap> scraps;
    final Light light;
    final Camera camera;
    private final double noise;
    private final long seed;
    private final java.util.Map<Long, int[]> cells = new java.util.HashMap<>();

    /** Printed sheets that lie above all scraps. */
    private final List<BentSheet> sheets;

    Scene(Floor floor, List<Scrap> scraps, Light light, Camera camera, double noise, long seed) {
        this(floor, scraps, List.of(), light, camera, noise, seed);
    }

    Scene(
            Floor floor,
            List<Scrap> scraps,
            List<BentSheet> sheets,
            Light light,
            Camera camera,
            double noise,
            long seed) {
        this.sheets = List.copyOf(sheets);
        this.floor = floor;
        this.scraps = List.copyOf(scraps);
        this.light = light;
        this.camera = camera;
        this.noise = noise;
        this.seed = seed;
        index();
    }

    private void index() {
        java.util.Map<Long, List<Integer>> found = new java.util.HashMap<>();
        for (int s = 0; s < scraps.size(); s++) {
            var box = scraps.get(s).path().getBounds2D();
            for (long i = cell(box.getMinX() - 8); i <= cell(box.getMaxX() + 8); i++) {
                for (long j = cell(box.getMinY() - 8); j <= cell(box.getMaxY() + 8); j++) {
                    found.computeIfAbsent(i * 100_003 + j, k -> new ArrayList<>())
                            .add(s);
                }
            }
        }
        found.forEach(
                (k, v) -> cells.put(k, v.stream().mapToInt(Integer::intValue).toArray()));
    }

    private static long cell(double mm) {
        return (long) Math.floor(mm / CELL_MM);
    }

    /** The photograph: four jittered rays a pixel, noise as of a phone indoors. */
    BufferedImage photograph() {
        BufferedImage image = new BufferedImage(camera.width, camera.height, BufferedImage.TYPE_3BYTE_BGR);
        IntStream.range(0, camera.height).parallel().forEach(y -> row(image, y, 0, camera.width));
        return image;
    }

    /** The same, drawn only where the sheets lie and a little way round them; the rest is grey. */
    BufferedImage ofSheets(int margin) {
        BufferedImage image = new BufferedImage(camera.width, camera.height, BufferedImage.TYPE_3BYTE_BGR);
        Arrays.fill(((DataBufferByte) image.getRaster().getDataBuffer()).getData(), (byte) 120);
        for (BentSheet sheet : sheets) {
            double[][] at = Arrays.stream(sheet.corners())
                    .map(c -> camera.pictureAt(c[0], c[1]))
                    .toArray(double[][]::new);
            DoubleSummaryStatistics x = Arrays.stream(at).mapToDouble(p -> p[0]).summaryStatistics();
            DoubleSummaryStatistics y = Arrays.stream(at).mapToDouble(p -> p[1]).summaryStatistics();
            int left = (int) Math.max(0, x.getMin() - margin);
            int right = (int) Math.min(camera.width, x.getMax() + margin);
            IntStream.range(
                            (int) Math.max(0, y.getMin() - margin),
                            (int) Math.min(camera.height, y.getMax() + margin))
                    .parallel()
                    .forEach(row -> row(image, row, left, right));
        }
        return image;
    }

    private void row(BufferedImage image, int y, int left, int right) {
        Random chance = new Random(seed * 31 + y);
        int[] line = new int[right - left];
        for (int x = left; x < right; x++) {
            double r = 0;
            double g = 0;
            double b = 0;
            for (int s = 0; s < 4; s++) {
                double jx = (s & 1) * 0.5 + chance.nextDouble() * 0.5 + (chance.nextDouble() - 0.5) * 0.9;
                double jy = (s >> 1) * 0.5 + chance.nextDouble() * 0.5 + (chance.nextDouble() - 0.5) * 0.9;
                Paint p = seen(x + jx, y + jy);
                r += p.r();
                g += p.g();
                b += p.b();
            }
            line[x - left] = (noisy(r / 4, chance) << 16) | (noisy(g / 4, chance) << 8) | noisy(b / 4, chance);
        }
        image.setRGB(left, y, right - left, 1, line, 0, right - left);
    }

    private int noisy(double linear, Random chance) {
        double v = Paint.encoded(linear) + chance.nextGaussian() * noise;
        return (int) Math.round(Math.max(0, Math.min(255, v)));
    }

    private Paint seen(double px, double py) {
        double[] at = camera.floorAt(px, py);
        double dx = (px - camera.width / 2.0) / camera.width;
        double dy = (py - camera.height / 2.0) / camera.width;
        double lit = light.at(at[0], at[1]) * (1 - light.falloff() * (dx * dx + dy * dy));
        for (BentSheet sheet : sheets) {
            Optional<Paint> print = sheet.seen(camera, px, py);
            if (print.isPresent()) {
                return print.get().times(lit);
            }
        }
        int[] near = cells.getOrDefault(cell(at[0]) * 100_003 + cell(at[1]), NOTHING);
        double contact = 1;
        for (int i = near.length - 1; i >= 0; i--) {
            Scrap scrap = scraps.get(near[i]);
            if (scrap.holds(at[0], at[1])) {
                return scrap.paint(at[0], at[1]).times(lit * contact);
            }
            double[] rim = scrap.rim(at[0], at[1]);
            if (scrap.frays(rim[0], rim[1])) {
                return scrap.paint(at[0], at[1]).times(lit * contact);
            }
            contact *= 1 - light.contact() * Math.exp(-rim[0] / 1.5);
        }
        return floor.at(at[0], at[1]).times(lit * contact);
    }

    /** How far a scrap's mean colour differs from the floor's as both are lit there (CIE 1976). */
    double contrast(Scrap scrap) {
        double x = 0;
        double y = 0;
        for (double[] c : scrap.corners()) {
            x += c[0] / scrap.sides();
            y += c[1] / scrap.sides();
        }
        double lit = light.at(x, y);
        return scrap.weave().mean().times(lit).differenceFrom(floor.ground(x, y).times(lit));
    }
}
