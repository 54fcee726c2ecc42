package hearthcloth.photo.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Draws scenes by seed: everything about a picture follows from one number and a {@link Wish}. */
final class Scenes {

    /** What kind of picture is wanted. */
    record Wish(Floor.Kind floor, double tiltDeg, double megapixels, int pieces, Format sheet) {}

    /** Width and height in millimetres. */
    record Format(double width, double height) {}

    static final Format A4 = new Format(210, 297);
    static final Format LETTER = new Format(215.9, 279.4);
    static final Format CARD = new Format(85.6, 53.98);

    private static final int[] FLOORS = {0xb08a5e, 0x8a6642, 0xc9a77c, 0x5d4632};
    private static final int[] CARPETS = {0x8f8a80, 0x6b7280, 0xb9ac98, 0x59504a, 0x2f3640};
    private static final int[] PLAINS = {0xd8d2c6, 0x777b80, 0x2b2d31, 0xb7c0c4, 0x9c8f7d, 0xe4ddcd};
    private static final int[] RUGS = {0x4a5d2f, 0x5d3b52, 0x2c5560};
    private static final int[] TILES = {0xa9a49b, 0x6f7274, 0x8d7562};
    private static final int[] STONES = {0xb3aca0, 0x77736d};
    private static final int[] SHEETS = {0x9fb4c7, 0xc3a7a0, 0x7d8a6b, 0x4f5b70};
    private static final int[] MATS = {0x2f5f4a, 0x4a4d50};
    private static final int[] FABRICS = {
        0x1f2a44, 0x7a1f2b, 0xe8d9c0, 0xf2efe6, 0x2e5e4e, 0xc7762b, 0x4a4a4d, 0x17181b, 0x9fb4c7, 0xd6a5a5, 0x6d597a,
        0xe0c341, 0x8a9a5b, 0x33506b, 0xb23a48, 0xcbbfae, 0x5a4634, 0xf0c9b5, 0x26262b, 0xa3a09a
    };

    private static final int[] CARDS = {0x1c3f94, 0xf5f5f5, 0xb01f2e, 0x2a2a2a, 0x3c8c5a};
    private static final List<Weave.Kind> FIGURED =
            List.of(Weave.Kind.STRIPE, Weave.Kind.CHECK, Weave.Kind.DOTS, Weave.Kind.PRINT);

    private final Random chance;
    private final long seed;

    private Scenes(long seed) {
        this.seed = seed;
        this.chance = new Random(seed);
    }

    static Scene drawn(long seed, Wish wish) {
        return new Scenes(seed).scene(wish);
    }

    private Scene scene(Wish wish) {
        int width = 4 * (int) Math.round(Math.sqrt(wish.megapixels() * 1e6 * 4 / 3) / 4);
        int height = width * 3 / 4;
        double across = Math.sqrt(Math.max(9, wish.pieces())) * 180;
        double focal = width * (0.70 + 0.12 * chance.nextDouble());
        double tilt = Math.toRadians(wish.tiltDeg());
        double distance = across * focal / width * (1 + 0.25 * Math.sin(tilt));
        double[] middle = {0, 0};
        Camera camera = new Camera(
                width,
                height,
                focal,
                -0.05 * chance.nextDouble(),
                middle,
                distance,
                tilt,
                (chance.nextDouble() - 0.5) * 0.8);
        Floor floor = floor(wish.floor());
        List<Scrap> scraps = new ArrayList<>();
        scraps.add(sheet(wish.sheet(), across, camera));
        for (int tries = 0; tries < 4000 && scraps.size() <= wish.pieces(); tries++) {
            Scrap scrap = scrap(across);
            if (fits(scrap, scraps, camera)) {
                scraps.add(scrap);
            }
        }
        return new Scene(floor, scraps, light(across), camera, 1.5 + 2.5 * chance.nextDouble(), seed);
    }

    private Floor floor(Floor.Kind kind) {
        int[] from = switch (kind) {
            case PLAIN -> PLAINS;
            case WOOD -> FLOORS;
            case CARPET -> CARPETS;
            case RUG -> RUGS;
            case MAT -> MATS;
            case HERRINGBONE -> FLOORS;
            case TILES -> TILES;
            case CHIPS -> STONES;
            case CREASED -> SHEETS;
        };
        return new Floor(kind, Paint.srgb(from[chance.nextInt(from.length)]), chance.nextInt(1_000_000));
    }

    private Light light(double across) {
        double slope = 0.45 * chance.nextDouble() / across;
        double angle = chance.nextDouble() * 6.28;
        List<Light.Shadow> shadows = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            shadows.add(new Light.Shadow(
                    (chance.nextDouble() - 0.5) * across,
                    (chance.nextDouble() - 0.5) * across * 0.75,
                    across * (0.15 + 0.25 * chance.nextDouble()),
                    across * (0.15 + 0.25 * chance.nextDouble()),
                    0.35 * chance.nextDouble(),
                    0.6));
        }
        return new Light(
                slope * Math.cos(angle),
                slope * Math.sin(angle),
                shadows,
                0.35 * chance.nextDouble(),
                0.5 * chance.nextDouble());
    }

    private Scrap sheet(Format size, double across, Camera camera) {
        int colour = size.equals(CARD) ? CARDS[chance.nextInt(CARDS.length)] : 0xf4f4f2;
        Weave paper = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 10, 5);
        while (true) {
            double turn = chance.nextDouble() * Math.PI;
            double[] at = spot(across * 0.5);
            List<double[]> corners = size.equals(CARD) ? card(at, turn) : box(at, size.width(), size.height(), turn);
            Scrap sheet = new Scrap(corners, paper, 0, true);
            if (fits(sheet, List.of(), camera)) {
                return sheet;
            }
        }
    }

    /** Rounded corners of 3.18 mm, the middle of what docs/sources.md#card allows, each in six short chords. */
    static List<double[]> card(double[] at, double turn) {
        double radius = 3.18;
        double[][] corners = new double[28][];
        for (int i = 0; i < 28; i++) {
            int corner = i / 7;
            double angle = Math.PI / 2 * (corner + i % 7 / 6.0) - Math.PI;
            double x = (corner == 0 || corner == 3 ? -1 : 1) * (CARD.width() / 2 - radius);
            double y = (corner < 2 ? -1 : 1) * (CARD.height() / 2 - radius);
            corners[i] = new double[] {x + radius * Math.cos(angle), y + radius * Math.sin(angle)};
        }
        return turned(at, turn, corners);
    }

    private Scrap scrap(double across) {
        double[] at = spot(across);
        double w = 45 + 170 * chance.nextDouble() * chance.nextDouble();
        double h = 45 + 170 * chance.nextDouble() * chance.nextDouble();
        double turn = chance.nextDouble() * Math.PI;
        int shape = chance.nextInt(10);
        List<double[]> corners =
                shape < 5 ? box(at, w, h, turn) : shape < 8 ? quad(at, w, h, turn) : ell(at, w, h, turn);
        double fray = chance.nextInt(6) == 0 ? 2 + 3 * chance.nextDouble() : 0;
        return new Scrap(corners, weave(), fray, false);
    }

    private Weave weave() {
        Weave.Kind kind = chance.nextInt(2) == 0 ? Weave.Kind.PLAIN : FIGURED.get(chance.nextInt(FIGURED.size()));
        Paint ground = Paint.srgb(FABRICS[chance.nextInt(FABRICS.length)]);
        Paint figure = Paint.srgb(FABRICS[chance.nextInt(FABRICS.length)]);
        return new Weave(kind, ground, figure, 4 + 12 * chance.nextDouble(), chance.nextInt(1_000_000));
    }

    private double[] spot(double across) {
        return new double[] {(chance.nextDouble() - 0.5) * across * 1.1, (chance.nextDouble() - 0.5) * across * 0.9};
    }

    static List<double[]> box(double[] at, double w, double h, double turn) {
        return turned(at, turn, new double[][] {{-w / 2, -h / 2}, {w / 2, -h / 2}, {w / 2, h / 2}, {-w / 2, h / 2}});
    }

    private List<double[]> quad(double[] at, double w, double h, double turn) {
        double[][] c = {{-w / 2, -h / 2}, {w / 2, -h / 2}, {w / 2, h / 2}, {-w / 2, h / 2}};
        for (double[] p : c) {
            p[0] += (chance.nextDouble() - 0.5) * 0.35 * w;
            p[1] += (chance.nextDouble() - 0.5) * 0.35 * h;
        }
        return turned(at, turn, c);
    }

    private List<double[]> ell(double[] at, double w0, double h0, double turn) {
        double w = Math.max(80, w0);
        double h = Math.max(80, h0);
        double a = w * (0.35 + 0.3 * chance.nextDouble());
        double b = h * (0.35 + 0.3 * chance.nextDouble());
        return turned(at, turn, new double[][] {
            {-w / 2, -h / 2},
            {w / 2, -h / 2},
            {w / 2, -h / 2 + b},
            {-w / 2 + a, -h / 2 + b},
            {-w / 2 + a, h / 2},
            {-w / 2, h / 2}
        });
    }

    private static List<double[]> turned(double[] at, double turn, double[][] corners) {
        List<double[]> out = new ArrayList<>();
        for (double[] c : corners) {
            out.add(new double[] {
                at[0] + c[0] * Math.cos(turn) - c[1] * Math.sin(turn),
                at[1] + c[0] * Math.sin(turn) + c[1] * Math.cos(turn)
            });
        }
        return out;
    }

    private static boolean fits(Scrap scrap, List<Scrap> others, Camera camera) {
        for (double[] c : scrap.corners()) {
            double[] p = camera.pictureAt(c[0], c[1]);
            if (p[0] < 25 || p[1] < 25 || p[0] > camera.width - 25 || p[1] > camera.height - 25) {
                return false;
            }
        }
        double gap = 9 + scrap.frayMm();
        for (Scrap other : others) {
            if (distance(scrap, other) < gap + other.frayMm()) {
                return false;
            }
        }
        return true;
    }

    private static double distance(Scrap a, Scrap b) {
        if (a.holds(b.corner(0)[0], b.corner(0)[1]) || b.holds(a.corner(0)[0], a.corner(0)[1])) {
            return 0;
        }
        double best = Double.MAX_VALUE;
        for (int i = 0; i < a.sides(); i++) {
            for (int j = 0; j < b.sides(); j++) {
                best = Math.min(best, segments(a.corner(i), a.corner(i + 1), b.corner(j), b.corner(j + 1)));
            }
        }
        return best;
    }

    private static double segments(double[] a, double[] b, double[] c, double[] d) {
        var one = new java.awt.geom.Line2D.Double(a[0], a[1], b[0], b[1]);
        var two = new java.awt.geom.Line2D.Double(c[0], c[1], d[0], d[1]);
        if (one.intersectsLine(two)) {
            return 0;
        }
        return Math.min(
                Math.min(one.ptSegDist(c[0], c[1]), one.ptSegDist(d[0], d[1])),
                Math.min(two.ptSegDist(a[0], a[1]), two.ptSegDist(b[0], b[1])));
    }
}
