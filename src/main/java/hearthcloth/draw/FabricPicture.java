package hearthcloth.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Her own picture of a fabric, prepared to be stored and tiled: read from PNG or JPEG, reduced to the size needed, and
 * drawn anew, so that nothing else in the given file (names, places, programs) is kept.
 */
public final class FabricPicture {

    /** The largest file accepted, in bytes; no telephone writes larger ones. */
    public static final int MOST_BYTES = 20 << 20;

    private static final long MOST_PIXELS = 50_000_000;

    /** The side of the stored picture, in pixels; enough for a swatch on any screen. */
    private static final int SIDE = 512;

    private FabricPicture() {}

    /**
     * The picture as a JPEG, a square from its middle, at most 512 pixels wide.
     *
     * @throws RefusedPictureException with a sentence for the maker, where it is no picture or too large
     */
    public static byte[] jpeg(byte[] file) {
        return jpeg(file, SIDE, FabricPicture::fitted);
    }

    /**
     * A given picture, bounded in bytes and pixels, drawn anew as a JPEG.
     *
     * @param side of the picture that is kept, in pixels; at least twice as many are read where there are so many
     * @param drawn what is kept of what was read
     * @throws RefusedPictureException with a sentence for the maker, where it is no picture or too large
     */
    static byte[] jpeg(byte[] file, int side, UnaryOperator<BufferedImage> drawn) {
        if (file.length > MOST_BYTES) {
            throw new RefusedPictureException("LARGE");
        }
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind(file)).next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            return written(drawn.apply(reader.read(0, sparing(reader, side))));
        } catch (RefusedPictureException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw new RefusedPictureException("DAMAGED", e);
        } finally {
            reader.dispose();
        }
    }

    private static String kind(byte[] file) {
        if (file.length > 3 && (file[0] & 0xff) == 0x89 && file[1] == 'P' && file[2] == 'N' && file[3] == 'G') {
            return "png";
        }
        if (file.length > 3 && (file[0] & 0xff) == 0xff && (file[1] & 0xff) == 0xd8) {
            return "jpeg";
        }
        throw new RefusedPictureException("KIND");
    }

    /** Makes the reader skip pixels of a large picture; the header is checked before anything is decompressed. */
    private static ImageReadParam sparing(ImageReader reader, int side) throws IOException {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > MOST_PIXELS) {
            throw new RefusedPictureException("PIXELS");
        }
        int every = (int) Math.max(1, Math.min(width, height) / (2L * side));
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return param;
    }

    /** The square in the middle, so that the picture tiles alike in both directions. */
    private static BufferedImage fitted(BufferedImage read) {
        int cut = Math.min(read.getWidth(), read.getHeight());
        int left = (read.getWidth() - cut) / 2;
        int top = (read.getHeight() - cut) / 2;
        int side = Math.min(SIDE, cut);
        BufferedImage fitted = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = fitted.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, side, side);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(read, 0, 0, side, side, left, top, left + cut, top + cut, null);
        graphics.dispose();
        return fitted;
    }

    private static byte[] written(BufferedImage picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(picture, "jpeg", out)) {
            throw new IOException("no writer of JPEG");
        }
        return out.toByteArray();
    }
}
