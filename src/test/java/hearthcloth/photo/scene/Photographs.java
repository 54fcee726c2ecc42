package hearthcloth.photo.scene;

import hearthcloth.draw.cloth.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** Drawn photographs for tests of other rooms: known pieces on a plain floor beside a sheet of A4. */
public final class Photographs {

    /** Drawn once in a process, however many tests send it; nothing about a drawing is left to chance. */
    private static final Map<List<Object>, byte[]> DRAWN = new ConcurrentHashMap<>();

    private Photographs() {}

    /** One known piece: its corners in millimetres on the floor, and its two colours; figured where they differ. */
    public record Known(List<List<Double>> corners, int ground, int figure) {

        /** A rectangle by its middle, sides and turn in degrees. */
        public static Known rectangle(double x, double y, double width, double height, double turnDeg, int colour) {
            return rectangle(x, y, width, height, turnDeg, colour, colour);
        }

        /** A figured one. */
        public static Known rectangle(
                double x, double y, double width, double height, double turnDeg, int colour, int figure) {
            double cos = Math.cos(Math.toRadians(turnDeg));
            double sin = Math.sin(Math.toRadians(turnDeg));
            List<List<Double>> corners = new ArrayList<>();
            for (double[] c : new double[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
                double u = c[0] * width / 2;
                double v = c[1] * height / 2;
                corners.add(List.of(x + u * cos - v * sin, y + u * sin + v * cos));
            }
            return new Known(corners, colour, figure);
        }

        private Scrap scrap(long seed) {
            Weave weave = new Weave(
                    ground == figure ? Weave.Kind.PLAIN : Weave.Kind.STRIPE,
                    Paint.srgb(ground),
                    Paint.srgb(figure),
                    9,
                    seed);
            return new Scrap(
                    corners.stream().map(c -> new double[] {c.get(0), c.get(1)}).toList(), weave, 0, false);
        }
    }

    /**
     * A photograph of these pieces from above, as a JPEG.
     *
     * @param acrossMm how much of the floor is seen from side to side; the sheet lies in the middle
     * @param width in pixels; three quarters as high
     */
    public static byte[] of(List<Known> pieces, double acrossMm, int width, double tiltDeg) {
        return DRAWN.computeIfAbsent(
                        List.of(pieces, acrossMm, width, tiltDeg), key -> draw(pieces, acrossMm, width, tiltDeg))
                .clone();
    }

    /** The same beside the measuring sheet, which lies in the middle, a little curled, as it comes out of a printer. */
    public static byte[] besideMeasuringSheet(List<Known> pieces, double acrossMm, int width, double tiltDeg) {
        return DRAWN.computeIfAbsent(
                        List.of("printed", pieces, acrossMm, width, tiltDeg),
                        key -> jpeg(printed(pieces, camera(acrossMm, width, tiltDeg))))
                .clone();
    }

    private static Scene printed(List<Known> pieces, Camera camera) {
        BentSheet sheet = new BentSheet(
                PrintedScenes.print(Paper.A4),
                PrintedScenes.PIXELS_PER_MM,
                0,
                0,
                0.1,
                BentSheet.Bend.curled(0.4, 40, 165, 4));
        List<Scrap> scraps = IntStream.range(0, pieces.size())
                .mapToObj(i -> pieces.get(i).scrap(i + 1))
                .toList();
        Floor floor = new Floor(Floor.Kind.PLAIN, Paint.srgb(0x9c8f7d), 3);
        return new Scene(floor, scraps, List.of(sheet), new Light(0.0001, 0.0001, List.of(), 0.2, 0.2), camera, 2, 7);
    }

    private static Camera camera(double acrossMm, int width, double tiltDeg) {
        double focal = width * 0.75;
        return new Camera(
                width,
                width * 3 / 4,
                focal,
                -0.01,
                new double[] {0, 0},
                acrossMm * focal / width,
                Math.toRadians(tiltDeg),
                0);
    }

    private static byte[] draw(List<Known> pieces, double acrossMm, int width, double tiltDeg) {
        List<Scrap> scraps = new ArrayList<>();
        scraps.add(new Scrap(
                List.of(
                        new double[] {-105, -148.5},
                        new double[] {105, -148.5},
                        new double[] {105, 148.5},
                        new double[] {-105, 148.5}),
                new Weave(Weave.Kind.PLAIN, Paint.srgb(0xf4f4f2), Paint.srgb(0xf4f4f2), 10, 5),
                0,
                true));
        for (Known piece : pieces) {
            scraps.add(piece.scrap(scraps.size()));
        }
        Floor floor = new Floor(Floor.Kind.PLAIN, Paint.srgb(0x9c8f7d), 3);
        Light light = new Light(0.0001, 0.0001, List.of(), 0.2, 0.2);
        return jpeg(new Scene(floor, scraps, light, camera(acrossMm, width, tiltDeg), 2, 7));
    }

    /** A photograph of so many pieces lying about, everything else by the seed. */
    public static byte[] drawn(long seed, int pieces, double megapixels) {
        return jpeg(Scenes.drawn(seed, new Scenes.Wish(Floor.Kind.PLAIN, 10, megapixels, pieces, Scenes.A4)));
    }

    private static byte[] jpeg(Scene scene) {
        try {
            return Evaluation.jpeg(scene.photograph(), 0.8f);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
