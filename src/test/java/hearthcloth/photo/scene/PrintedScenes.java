package hearthcloth.photo.scene;

import hearthcloth.draw.MeasuringSheetPage;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.words.Language;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws floors on which the measuring sheet lies, printed from its PDF: flat or bent, in shadow, seen slantwise. */
final class PrintedScenes {

    /** Pixels of the rendered PDF to a millimetre. */
    static final double PIXELS_PER_MM = 6;

    /** How the sheet lies. */
    enum Lying {
        FLAT,
        CURLED,
        ARCHED,
        HALF_CRUMPLED,
        CRUMPLED;

        BentSheet.Bend bend(Random chance, double most) {
            double direction = chance.nextDouble() * 2 * Math.PI;
            double height = most * (0.3 + 0.7 * chance.nextDouble());
            return switch (this) {
                case FLAT -> BentSheet.Bend.none();
                case CURLED -> BentSheet.Bend.curled(direction, 100 * chance.nextDouble() - 40, 165, height);
                case ARCHED -> BentSheet.Bend.arched(direction, 150, height);
                case HALF_CRUMPLED ->
                    BentSheet.Bend.crumpled(
                            direction, 0, 40 + 50 * chance.nextDouble(), height / 2, 1.2, chance.nextInt(1000));
                case CRUMPLED ->
                    BentSheet.Bend.crumpled(
                            direction, -300, 40 + 50 * chance.nextDouble(), height / 3, 1.2, chance.nextInt(1000));
            };
        }
    }

    /** What kind of picture is wanted; {@code liftMm} is the most that a bent sheet stands off the floor. */
    record Wish(Lying lying, double tiltDeg, double megapixels, double liftMm, int pieces) {}

    private static final int[] GROUNDS = {0xb08a5e, 0x8f8a80, 0x2b2d31, 0xe4ddcd, 0xf0efec, 0x5d6f7c};

    private PrintedScenes() {}

    /** The page as printed on paper: not quite white, and its black not quite black. */
    static BufferedImage print(Paper paper) {
        try (PDDocument document = Loader.loadPDF(MeasuringSheetPage.pdf(paper, Language.ENGLISH))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, (float) (PIXELS_PER_MM * 25.4));
            for (int y = 0; y < page.getHeight(); y++) {
                for (int x = 0; x < page.getWidth(); x++) {
                    int grey = 18 + (page.getRGB(x, y) & 255) * 226 / 255;
                    page.setRGB(x, y, grey << 16 | grey << 8 | grey);
                }
            }
            return page;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Scene drawn(long seed, BufferedImage print, Wish wish) {
        Random chance = new Random(seed);
        int width = 4 * (int) Math.round(Math.sqrt(wish.megapixels() * 1e6 * 4 / 3) / 4);
        double across = 750 + 900 * chance.nextDouble();
        double focal = width * (0.7 + 0.12 * chance.nextDouble());
        double tilt = Math.toRadians(wish.tiltDeg());
        Camera camera = new Camera(
                width,
                width * 3 / 4,
                focal,
                -0.04 * chance.nextDouble(),
                new double[] {0, 0},
                across * focal / width * (1 + 0.25 * Math.sin(tilt)),
                tilt,
                (chance.nextDouble() - 0.5) * 0.8);
        BentSheet sheet = lying(chance, print, wish, camera, across);
        List<Scrap> pieces = new ArrayList<>();
        for (int tries = 0; tries < 2000 && pieces.size() < wish.pieces(); tries++) {
            piece(chance, sheet, pieces, across, camera).ifPresent(pieces::add);
        }
        Floor.Kind kind = List.of(Floor.Kind.PLAIN, Floor.Kind.WOOD, Floor.Kind.CARPET)
                .get(chance.nextInt(wish.pieces() == 0 ? 3 : 2));
        Floor floor = new Floor(kind, Paint.srgb(GROUNDS[chance.nextInt(GROUNDS.length)]), seed);
        return new Scene(
                floor,
                pieces,
                List.of(sheet),
                light(chance, sheet, across, wish.pieces() > 0),
                camera,
                1.5 + 2 * chance.nextDouble(),
                seed);
    }

    private static BentSheet lying(Random chance, BufferedImage print, Wish wish, Camera camera, double across) {
        BentSheet.Bend bend = wish.lying().bend(chance, wish.liftMm());
        while (true) {
            BentSheet sheet = new BentSheet(
                    print,
                    PIXELS_PER_MM,
                    (chance.nextDouble() - 0.5) * across * 0.9,
                    (chance.nextDouble() - 0.5) * across * 0.7,
                    chance.nextDouble() * 2 * Math.PI,
                    bend);
            if (isWhole(sheet.corners(), camera)) {
                return sheet;
            }
        }
    }

    private static boolean isWhole(double[][] corners, Camera camera) {
        for (double[] corner : corners) {
            double[] at = camera.pictureAt(corner[0], corner[1]);
            if (at[0] < 30 || at[1] < 30 || at[0] > camera.width - 30 || at[1] > camera.height - 30) {
                return false;
            }
        }
        return true;
    }

    private static java.util.Optional<Scrap> piece(
            Random chance, BentSheet sheet, List<Scrap> others, double across, Camera camera) {
        double[] at = {(chance.nextDouble() - 0.5) * across, (chance.nextDouble() - 0.5) * across * 0.8};
        double w = 60 + 120 * chance.nextDouble();
        double h = 60 + 120 * chance.nextDouble();
        double far = Math.hypot(w, h) / 2;
        double[][] rim = sheet.corners();
        double[] middle = {(rim[0][0] + rim[2][0]) / 2, (rim[0][1] + rim[2][1]) / 2};
        boolean free = Math.hypot(at[0] - middle[0], at[1] - middle[1]) > far + 210
                && others.stream()
                        .allMatch(o -> Math.hypot(at[0] - middle(o)[0], at[1] - middle(o)[1])
                                > far + Math.hypot(o.side(0), o.side(1)) / 2 + 12);
        List<double[]> corners = Scenes.box(at, w, h, chance.nextDouble() * Math.PI);
        int colour = new int[] {0x1f2a44, 0x7a1f2b, 0x2e5e4e, 0xc7762b, 0x17181b, 0xb23a48}[chance.nextInt(6)];
        Weave weave = new Weave(Weave.Kind.PLAIN, Paint.srgb(colour), Paint.srgb(colour), 8, chance.nextInt(100_000));
        return free && isWhole(corners.toArray(double[][]::new), camera)
                ? java.util.Optional.of(new Scrap(corners, weave, 0, false))
                : java.util.Optional.empty();
    }

    private static double[] middle(Scrap scrap) {
        return new double[] {
            (scrap.corner(0)[0] + scrap.corner(2)[0]) / 2, (scrap.corner(0)[1] + scrap.corner(2)[1]) / 2
        };
    }

    /** A slope of light, and a shadow whose edge crosses the sheet; a soft one where pieces are to be read as well. */
    private static Light light(Random chance, BentSheet sheet, double across, boolean soft) {
        double[] corner = sheet.corners()[chance.nextInt(4)];
        Light.Shadow shadow = new Light.Shadow(
                corner[0] + (chance.nextDouble() - 0.5) * 150,
                corner[1] + (chance.nextDouble() - 0.5) * 150,
                80 + 150 * chance.nextDouble(),
                80 + 150 * chance.nextDouble(),
                (soft ? 0.1 : 0.3) + (soft ? 0.2 : 0.4) * chance.nextDouble(),
                (soft ? 0.5 : 0.08) + 0.5 * chance.nextDouble());
        return new Light(
                (chance.nextDouble() - 0.5) * 0.6 / across,
                (chance.nextDouble() - 0.5) * 0.6 / across,
                List.of(shadow),
                0.2,
                0.4 * chance.nextDouble());
    }
}
