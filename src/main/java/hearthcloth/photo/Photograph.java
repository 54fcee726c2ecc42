package hearthcloth.photo;

import hearthcloth.colour.Colour;
import hearthcloth.geometry.Point;
import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.LabTables;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/** A decoded, upright photograph: reduced for the screen, and as a source of straightened swatches of cloth. */
public final class Photograph {

    /** The largest file that is read, in bytes. */
    public static final int MOST_BYTES = ImageDecoder.MOST_BYTES;

    private final PixelImage picture;

    private Photograph(PixelImage picture) {
        this.picture = picture;
    }

    /** Why these bytes cannot be read, judged by their header alone; empty where they may be read. */
    public static Optional<Sentence> refusal(byte[] bytes) {
        try {
            ImageDecoder.look(bytes);
            return Optional.empty();
        } catch (PhotoRefusedException e) {
            return Optional.of(e.sentence());
        } catch (RuntimeException e) {
            return Optional.of(PhotographingSentences.pictureDamaged());
        }
    }

    /** The height of the upright picture as a multiple of its width, told by the header; empty where it cannot be read. */
    public static Optional<Double> proportion(byte[] bytes) {
        try {
            return Optional.of(ImageDecoder.proportion(bytes));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /**
     * Decodes a photograph that was read before.
     *
     * @throws RefusedException with a sentence, where it cannot be read after all
     */
    public static Photograph of(byte[] bytes) {
        try {
            return new Photograph(ImageDecoder.decode(bytes).picture());
        } catch (PhotoRefusedException e) {
            throw new RefusedException(e.sentence());
        }
    }

    /**
     * Decodes any picture, however small.
     *
     * @throws RefusedException with a sentence, where it cannot be read
     */
    static Photograph ofAny(byte[] bytes) {
        try {
            return new Photograph(ImageDecoder.picture(bytes));
        } catch (PhotoRefusedException e) {
            throw new RefusedException(e.sentence());
        }
    }

    /** Decodes what {@link #small} wrote. */
    public static Photograph ofSmall(byte[] jpeg) {
        try {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
            PixelImage picture = new PixelImage(image.getWidth(), image.getHeight());
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    int rgb = image.getRGB(x, y);
                    picture.put(x, y, rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
                }
            }
            return new Photograph(picture);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole picture as a JPEG whose longer side has at most {@code longSide} pixels. */
    public byte[] small(int longSide) {
        double step = Math.max(1, Math.max(picture.width, picture.height) / (double) longSide);
        BufferedImage image = new BufferedImage(
                (int) Math.max(1, Math.round(picture.width / step)),
                (int) Math.max(1, Math.round(picture.height / step)),
                BufferedImage.TYPE_INT_RGB);
        IntStream.range(0, image.getHeight()).forEach(y -> {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, mean(x * step, y * step, step));
            }
        });
        return jpeg(image);
    }

    /** The mean colours of square places, {@code side} of them along the longer side. */
    List<Colour> colours(int side) {
        double step = Math.max(1, Math.max(picture.width, picture.height) / (double) side);
        List<Colour> colours = new ArrayList<>();
        for (double y = 0; y + step <= picture.height; y += step) {
            for (double x = 0; x + step <= picture.width; x += step) {
                colours.add(Colour.of(mean(x, y, step)));
            }
        }
        return colours;
    }

    /** The width in pixels. */
    public int width() {
        return picture.width;
    }

    /**
     * The corners of what shows round a place of this small picture, such as a piece that the reader missed; empty where no rim
     * goes round it.
     *
     * @param place in pixels of the picture that outlines refer to, as are the corners
     * @param full width in pixels of that picture
     */
    public List<Point> shapeAt(Point place, int full) {
        double enlarged = (double) full / picture.width;
        return new ShapeAtTap(picture, ReadingParameters.standard())
                .corners(place.times(1 / enlarged)).stream()
                        .map(corner -> corner.times(enlarged))
                        .toList();
    }

    private int mean(double left, double top, double step) {
        int x0 = (int) left;
        int y0 = (int) top;
        int x1 = Math.min(picture.width, Math.max(x0 + 1, (int) (left + step)));
        int y1 = Math.min(picture.height, Math.max(y0 + 1, (int) (top + step)));
        long r = 0;
        long g = 0;
        long b = 0;
        for (int y = Math.min(y0, picture.height - 1); y < y1; y++) {
            for (int x = Math.min(x0, picture.width - 1); x < x1; x++) {
                int rgb = picture.rgb(x, y);
                r += rgb >> 16 & 255;
                g += rgb >> 8 & 255;
                b += rgb & 255;
            }
        }
        int count = Math.max(1, (x1 - x0) * (y1 - y0));
        return (int) (r / count) << 16 | (int) (g / count) << 8 | (int) (b / count);
    }

    /**
     * A square of cloth from the middle of a rectangle on the floor, as seen straight from above, its side along that
     * of the rectangle. The room's light is removed so that the mean colour is {@code colour}.
     *
     * @param sideMm side of the square, in millimetres
     * @param pixels side of the resulting picture, in pixels
     */
    public byte[] cutOut(FloorScale scale, LargestRectangle.Box box, double sideMm, int pixels, Colour colour) {
        double cos = Math.cos(box.angleRad());
        double sin = Math.sin(box.angleRad());
        double[] light = new double[3];
        double[][] seen = new double[pixels * pixels][];
        for (int v = 0; v < pixels; v++) {
            for (int u = 0; u < pixels; u++) {
                double x = ((u + 0.5) / pixels - 0.5) * sideMm;
                double y = ((v + 0.5) / pixels - 0.5) * sideMm;
                Point at = scale.inPicture(box.middle().plus(x * cos - y * sin, x * sin + y * cos));
                double[] rgb = new double[3];
                picture.add(at.x(), at.y(), 1, rgb);
                for (int c = 0; c < 3; c++) {
                    rgb[c] = LabTables.light((int) Math.round(Math.max(0, Math.min(255, rgb[c]))));
                    light[c] += rgb[c] / seen.length;
                }
                seen[v * pixels + u] = rgb;
            }
        }
        return jpeg(relit(seen, pixels, light, colour));
    }

    /** Scales each of red, green and blue light by its own factor, within limits. */
    private static BufferedImage relit(double[][] seen, int pixels, double[] light, Colour colour) {
        double[] wanted = {
            LabTables.light(colour.red()), LabTables.light(colour.green()), LabTables.light(colour.blue())
        };
        BufferedImage image = new BufferedImage(pixels, pixels, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < seen.length; i++) {
            int rgb = 0;
            for (int c = 0; c < 3; c++) {
                double share = Math.max(0.4, Math.min(2.5, wanted[c] / Math.max(1e-4, light[c])));
                rgb = rgb << 8 | encoded(seen[i][c] * share);
            }
            image.setRGB(i % pixels, i / pixels, rgb);
        }
        return image;
    }

    /** The inverse of {@link LabTables#light}: linear light to an 8-bit sRGB value (docs/sources.md#srgb). */
    private static int encoded(double light) {
        double v = Math.max(0, Math.min(1, light));
        return (int) Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055));
    }

    /**
     * How the two parts of a piece look, from the difference this small picture shows between each of them and the
     * whole.
     *
     * @param full width in pixels of the picture that the outlines refer to
     */
    public List<PieceAppearance> looks(ReadPiece whole, List<ReadPiece> parts, int full) {
        return new SmallPictureLook(picture).looks(whole, parts, full);
    }

    /**
     * How the cloth inside an outline looks, read from this small picture as the reader reads it from the large one.
     *
     * @param outline the outline to look at
     * @param scale of the large picture
     * @param sheet that lies on it
     */
    public PieceAppearance look(PieceOutline outline, FloorScale scale, ReferenceSheet sheet) {
        return new SmallPictureLook(picture).look(outline, scale, sheet);
    }

    PixelImage pixels() {
        return picture;
    }

    static byte[] jpeg(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, "jpeg", out)) {
                throw new IOException("no writer of JPEG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
