package hearthcloth.photo.scene;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A floor with scraps and a reference sheet, its light and its camera: everything a photograph is drawn from. */
final class Scene {

    private static final double CELL_MM = 20;
    /** As far as a rim shades or frays. */
    private static final double RIM_MM = 8;

    private static final int[] NOTHING = {};

    final Floor floor;
    final List<Scrap> scraps;
    final Light light;
    final Camera camera;
    private final double noise;
    private final long seed;
    private final long firstColumn;
    private final long firstRow;
    private final int[][][] cells;

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
        List<Rectangle2D> boxes =
                scraps.stream().map(scrap -> scrap.path().getBounds2D()).toList();
        firstColumn =
                cell(boxes.stream().mapToDouble(Rectangle2D::getMinX).min().orElse(0) - RIM_MM);
        firstRow = cell(boxes.stream().mapToDouble(Rectangle2D::getMinY).min().orElse(0) - RIM_MM);
        long lastColumn =
                cell(boxes.stream().mapToDouble(Rectangle2D::getMaxX).max().orElse(0) + RIM_MM);
        long lastRow =
                cell(boxes.stream().mapToDouble(Rectangle2D::getMaxY).max().orElse(0) + RIM_MM);
        cells = new int[(int) (lastColumn - firstColumn + 1)][(int) (lastRow - firstRow + 1)][];
        for (int[][] column : cells) {
            Arrays.fill(column, NOTHING);
        }
        for (int s = 0; s < boxes.size(); s++) {
            lay(s, boxes.get(s));
        }
    }

    /** Notes a scrap in each cell that it or its rim may reach. */
    private void lay(int scrap, Rectangle2D box) {
        for (long i = cell(box.getMinX() - RIM_MM); i <= cell(box.getMaxX() + RIM_MM); i++) {
            for (long j = cell(box.getMinY() - RIM_MM); j <= cell(box.getMaxY() + RIM_MM); j++) {
                int[][] column = cells[(int) (i - firstColumn)];
                int row = (int) (j - firstRow);
                column[row] = Arrays.copyOf(column[row], column[row].length + 1);
                column[row][column[row].length - 1] = scrap;
            }
        }
    }

    private int[] near(double x, double y) {
        long column = cell(x) - firstColumn;
        long row = cell(y) - firstRow;
        boolean isNear = column >= 0 && column < cells.length && row >= 0 && row < cells[0].length;
        return isNear ? cells[(int) column][(int) row] : NOTHING;
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
            IntStream.range((int) Math.max(0, y.getMin() - margin), (int) Math.min(camera.height, y.getMax() + margin))
                    .parallel()
                    .forEach(row -> row(image, row, left, right));
        }
        return image;
    }

    private void row(BufferedImage image, int y, int left, int right) {
        Chance chance = new Chance(seed * 31 + y);
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

    private int noisy(double linear, Chance chance) {
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
        int[] near = near(at[0], at[1]);
        double contact = 1;
        for (int i = near.length - 1; i >= 0; i--) {
            Scrap scrap = scraps.get(near[i]);
            if (scrap.holds(at[0], at[1])) {
                return scrap.paint(at[0], at[1]).times(lit * contact);
            }
            contact *= light.cast().at(scrap, at[0], at[1]);
            if (scrap.frayMm() <= 0 && light.contact() == 0) {
                continue;
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
