package hearthcloth.photo.image;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Turns the bytes of a JPEG or PNG into an upright {@link PixelImage}, or says why it cannot.
 *
 * <p>Nothing is decompressed before the header's width and height are known to make 2 to 50 megapixels; beyond 16
 * megapixels only every second (or third) pixel is kept, so that memory stays near 100 MB. Colour profiles are ignored.
 */
public final class ImageDecoder {

    /** The largest file accepted, in bytes; a telephone's file of 50 megapixels is smaller. */
    public static final int MOST_BYTES = 80 << 20;

    /** Pictures with fewer megapixels are refused, since their edges cannot be measured. */
    private static final double LEAST_MEGAPIXELS = 2;
    /** Cameras that are called 50 megapixels write up to 8192 × 6144 pixels. */
    private static final double MOST_MEGAPIXELS = 50.4;

    /** More megapixels than this are thinned while they are read. */
    private static final double KEPT_MEGAPIXELS = 16;
    /** The most scans of a progressive JPEG. Ten are usual; thousands are a way to keep a decoder busy. */
    private static final int MOST_SCANS = 64;

    /**
     * A decoded photograph.
     *
     * @param turn EXIF orientation, 1 to 8, already applied
     * @param focalShare focal length divided by the picture's longer side, where the file gives it
     */
    public record Decoded(PixelImage picture, int turn, Optional<Double> focalShare) {

        /** The same photograph at half the size. */
        public Decoded halved() {
            return new Decoded(picture.halved(), turn, focalShare);
        }
    }

    private ImageDecoder() {}

    /**
     * Decodes a photograph.
     *
     * @throws PhotoRefusedException with a sentence for the maker
     */
    public static Decoded decode(byte[] bytes) {
        return decode(bytes, ImageDecoder::checked);
    }

    /**
     * Decodes any picture, however small, since nothing is measured by it.
     *
     * @throws PhotoRefusedException with a sentence for the maker
     */
    public static PixelImage picture(byte[] bytes) {
        return decode(bytes, ImageDecoder::kept).picture();
    }

    /** @param keeping from width and height, of how many pixels along each way one is kept */
    private static Decoded decode(byte[] bytes, IntBinaryOperator keeping) {
        String kind = kind(bytes);
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(kind);
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            int every = keeping.applyAsInt(reader.getWidth(0), reader.getHeight(0));
            if (kind.equals("jpeg") && scans(bytes) > MOST_SCANS) {
                throw new PhotoRefusedException(PhotographingSentences.pictureScans());
            }
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(every, every, 0, 0);
            BufferedImage image = reader.read(0, param);
            Metadata metadata = metadata(bytes);
            int turn = turn(metadata);
            return new Decoded(upright(image, turn), turn, focalShare(metadata));
        } catch (IOException | RuntimeException e) {
            if (e instanceof PhotoRefusedException refused) {
                throw refused;
            }
            throw new PhotoRefusedException(PhotographingSentences.pictureUnread(), e);
        } finally {
            reader.dispose();
        }
    }

    /** Reads only the header, and refuses what {@link #decode} would refuse for its kind or size. */
    public static void look(byte[] bytes) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind(bytes)).next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            checked(reader.getWidth(0), reader.getHeight(0));
        } catch (IOException e) {
            throw new PhotoRefusedException(PhotographingSentences.pictureDamaged(), e);
        } finally {
            reader.dispose();
        }
    }

    /** The height of the upright picture as a multiple of its width, from the header alone. */
    public static double proportion(byte[] bytes) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind(bytes)).next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            double lying = (double) reader.getHeight(0) / reader.getWidth(0);
            return turn(metadata(bytes)) >= 5 ? 1 / lying : lying;
        } catch (IOException e) {
            throw new PhotoRefusedException(PhotographingSentences.pictureDamaged(), e);
        } finally {
            reader.dispose();
        }
    }

    /** How the camera was held, as EXIF writes it: 1 to 8, and 1 where the file does not say. */
    public static int turn(byte[] bytes) {
        return turn(metadata(bytes));
    }

    private static String kind(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw new PhotoRefusedException(PhotographingSentences.pictureLarge());
        }
        if (starts(bytes, 0, "\u00ff\u00d8\u00ff")) {
            return "jpeg";
        }
        if (starts(bytes, 0, "\u0089PNG\r\n\u001a\n")) {
            return "png";
        }
        if (starts(bytes, 4, "ftyp")) {
            throw new PhotoRefusedException(PhotographingSentences.pictureHeic());
        }
        throw new PhotoRefusedException(PhotographingSentences.pictureKind());
    }

    private static boolean starts(byte[] bytes, int at, String mark) {
        byte[] wanted = mark.getBytes(StandardCharsets.ISO_8859_1);
        if (bytes.length < at + wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if (bytes[at + i] != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    private static int checked(int width, int height) {
        double megapixels = (double) width * height / 1e6;
        int every = kept(width, height);
        if (megapixels < LEAST_MEGAPIXELS || Math.min(width, height) < 600) {
            throw new PhotoRefusedException(
                    PhotographingSentences.pictureSmall(Argument.number(height), Argument.number(width)));
        }
        return every;
    }

    private static int kept(int width, int height) {
        double megapixels = (double) width * height / 1e6;
        if (megapixels > MOST_MEGAPIXELS) {
            throw new PhotoRefusedException(PhotographingSentences.picturePixels(
                    Argument.number(height), Argument.number(Math.round(megapixels)), Argument.number(width)));
        }
        return (int) Math.ceil(Math.sqrt(megapixels / KEPT_MEGAPIXELS));
    }

    private static int scans(byte[] bytes) {
        int count = 0;
        for (int i = 0; i + 1 < bytes.length; i++) {
            if (bytes[i] == (byte) 0xff && bytes[i + 1] == (byte) 0xda) {
                count++;
            }
        }
        return count;
    }

    private static Metadata metadata(byte[] bytes) {
        try {
            return ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes), bytes.length);
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            return new Metadata();
        }
    }

    private static int turn(Metadata metadata) {
        ExifIFD0Directory exif = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Integer turn = exif == null ? null : exif.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        return turn == null || turn < 1 || turn > 8 ? 1 : turn;
    }

    private static Optional<Double> focalShare(Metadata metadata) {
        ExifSubIFDDirectory exif = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        Integer focal = exif == null ? null : exif.getInteger(ExifSubIFDDirectory.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH);
        return focal == null || focal < 10 || focal > 200 ? Optional.empty() : Optional.of(focal / 36.0);
    }

    private static PixelImage upright(BufferedImage image, int turn) {
        int width = image.getWidth();
        int height = image.getHeight();
        PixelImage lying = new PixelImage(width, height, bytes(image));
        if (turn == 1) {
            return lying;
        }
        PixelImage picture = turn >= 5 ? new PixelImage(height, width) : new PixelImage(width, height);
        IntStream.range(0, height).parallel().forEach(y -> {
            for (int x = 0; x < width; x++) {
                int rgb = lying.rgb(x, y);
                int u = turn >= 5
                        ? (turn == 5 || turn == 8 ? y : height - 1 - y)
                        : turn == 2 || turn == 3 ? width - 1 - x : x;
                int v = turn >= 5
                        ? (turn == 5 || turn == 6 ? x : width - 1 - x)
                        : turn == 3 || turn == 4 ? height - 1 - y : y;
                picture.put(u, v, rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
            }
        });
        return picture;
    }

    /**
     * Blue, green and red of each pixel, taken directly from a JPEG's buffer and painted into such a buffer from any
     * other.
     */
    private static byte[] bytes(BufferedImage image) {
        BufferedImage plain = image;
        if (image.getType() != BufferedImage.TYPE_3BYTE_BGR) {
            plain = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
            int[] line = new int[image.getWidth()];
            for (int y = 0; y < image.getHeight(); y++) {
                image.getRGB(0, y, line.length, 1, line, 0, line.length);
                plain.setRGB(0, y, line.length, 1, line, 0, line.length);
            }
        }
        return ((DataBufferByte) plain.getRaster().getDataBuffer()).getData();
    }
}
