package hearthcloth.photo.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** {@link ImageDecoder}: upright, thinned, or refused with a sentence in a {@link PhotoRefusedException}. */
class ImageDecoderTest {

    private static final int A = 0xff0000;
    private static final int B = 0x00ff00;
    private static final int C = 0x0000ff;
    private static final int D = 0xffff00;

    /** Quarters of four colours: A B over C D. */
    private static BufferedImage quarters(int width, int height, int type) {
        BufferedImage image = new BufferedImage(width, height, type);
        Graphics2D on = image.createGraphics();
        int[] colours = {A, B, C, D};
        for (int i = 0; i < 4; i++) {
            on.setColor(new Color(colours[i]));
            on.fillRect(i % 2 * (width / 2), i / 2 * (height / 2), width / 2, height / 2);
        }
        on.dispose();
        return image;
    }

    private static byte[] written(BufferedImage image, String kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, kind, out);
        return out.toByteArray();
    }

    /** A JPEG with a block that says how it is turned and the focal length on 35 mm film. */
    private static byte[] noted(byte[] jpeg, int orientation, int focal) {
        ByteBuffer block = ByteBuffer.allocate(200);
        block.putShort((short) 0xffe1).putShort((short) 0);
        block.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        block.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8);
        block.putShort((short) 2);
        block.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        block.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(38).putInt(0);
        block.putShort((short) 1);
        block.putShort((short) 0xa405)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) focal)
                .putShort((short) 0);
        block.putInt(0);
        int length = block.position();
        block.putShort(2, (short) (length - 2));
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + length);
        out.put(jpeg, 0, 2).put(block.array(), 0, length).put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    private static boolean isLike(int rgb, int colour) {
        return Math.abs((rgb >> 16 & 255) - (colour >> 16 & 255)) < 40
                && Math.abs((rgb >> 8 & 255) - (colour >> 8 & 255)) < 40
                && Math.abs((rgb & 255) - (colour & 255)) < 40;
    }

    /** For orientations 1 to 8 what is seen upright, row by row; from the words of EXIF 2.32 on where row and column 0 are. */
    private static final List<List<Integer>> UPRIGHT = List.of(
            List.of(A, B, C, D),
            List.of(B, A, D, C),
            List.of(D, C, B, A),
            List.of(C, D, A, B),
            List.of(A, C, B, D),
            List.of(C, A, D, B),
            List.of(D, B, C, A),
            List.of(B, D, A, C));

    @Test
    void each_of_the_eight_orientations_is_turned_upright() throws IOException {
        byte[] jpeg = written(quarters(1800, 1120, BufferedImage.TYPE_3BYTE_BGR), "jpg");
        for (int turn = 1; turn <= 8; turn++) {
            ImageDecoder.Decoded decoded = ImageDecoder.decode(noted(jpeg, turn, 26));

            PixelImage picture = decoded.picture();
            assertThat(decoded.turn()).isEqualTo(turn);
            assertThat(picture.width).isEqualTo(turn >= 5 ? 1120 : 1800);
            assertThat(picture.height).isEqualTo(turn >= 5 ? 1800 : 1120);
            for (int i = 0; i < 4; i++) {
                int rgb = picture.rgb((1 + 2 * (i % 2)) * picture.width / 4, (1 + 2 * (i / 2)) * picture.height / 4);
                assertThat(isLike(rgb, UPRIGHT.get(turn - 1).get(i)))
                        .as("orientation %s, quarter %s: %06x", turn, i, rgb)
                        .isTrue();
            }
            // 36 mm is the longer side of the film
            assertThat(decoded.focalShare().orElseThrow()).isCloseTo(26.0 / 36, within(1e-9));
        }
    }

    @Test
    void a_note_that_cannot_be_is_passed_over() throws IOException {
        byte[] jpeg = written(quarters(1800, 1120, BufferedImage.TYPE_3BYTE_BGR), "jpg");

        ImageDecoder.Decoded decoded = ImageDecoder.decode(noted(jpeg, 9, 900));

        assertThat(decoded.turn()).isEqualTo(1);
        assertThat(decoded.focalShare()).isEmpty();
        assertThat(ImageDecoder.decode(noted(jpeg, 0, 9)).turn()).isEqualTo(1);
        assertThat(ImageDecoder.decode(noted(jpeg, 1, 9)).focalShare()).isEmpty();
    }

    @Test
    void a_large_picture_is_thinned_and_any_kind_of_png_is_read() throws IOException {
        // 17 megapixels: every second pixel
        BufferedImage large = quarters(5_000, 3_400, BufferedImage.TYPE_BYTE_BINARY);

        PixelImage picture = ImageDecoder.decode(written(large, "png")).picture();

        assertThat(picture.width).isEqualTo(2_500);
        assertThat(picture.height).isEqualTo(1_700);
        assertThat(picture.rgb(10, 10)).isEqualTo(large.getRGB(20, 20) & 0xffffff);
        assertThat(picture.rgb(2_490, 10)).isEqualTo(large.getRGB(4_980, 20) & 0xffffff);
    }

    private static void refused(byte[] bytes, String... words) {
        assertThatThrownBy(() -> ImageDecoder.look(bytes))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContainingAll(words);
        assertThatThrownBy(() -> ImageDecoder.decode(bytes))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContainingAll(words);
    }

    @Test
    void what_is_too_small_too_narrow_or_no_picture_is_refused_at_first_look() throws IOException {
        int bits = BufferedImage.TYPE_BYTE_BINARY;
        byte[] small = written(new BufferedImage(1_600, 1_240, bits), "png");
        byte[] narrow = written(new BufferedImage(3_500, 599, bits), "png");
        byte[] enough = written(new BufferedImage(1_600, 1_250, bits), "png");

        refused(small, "1600", "1240", "2 megapixels");
        refused(narrow, "3500", "599");
        ImageDecoder.look(enough);
        assertThat(ImageDecoder.decode(enough).picture().width).isEqualTo(1_600);
        refused("GIF89a".getBytes(StandardCharsets.US_ASCII), "JPEG or PNG");
        refused(new byte[0], "JPEG or PNG");
        refused("....ftypheic".getBytes(StandardCharsets.US_ASCII), "HEIC");
        refused(new byte[ImageDecoder.MOST_BYTES + 1], "80 MB");
        refused(Arrays.copyOf(enough, 20), "damaged");
        assertThatThrownBy(() -> ImageDecoder.decode(Arrays.copyOf(enough, enough.length / 2)))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("damaged")
                .hasCauseInstanceOf(Exception.class);
    }

    @Test
    void a_jpeg_of_endless_scans_is_refused_before_it_is_read() throws IOException {
        byte[] jpeg = written(quarters(1800, 1120, BufferedImage.TYPE_3BYTE_BGR), "jpg");
        byte[] scans = new byte[2 * 70];
        for (int i = 0; i < scans.length; i += 2) {
            scans[i] = (byte) 0xff;
            scans[i + 1] = (byte) 0xda;
        }
        ByteBuffer longer = ByteBuffer.allocate(jpeg.length + scans.length);
        longer.put(jpeg).put(scans);

        assertThatThrownBy(() -> ImageDecoder.decode(longer.array()))
                .isInstanceOf(PhotoRefusedException.class)
                .hasMessageContaining("no camera");
    }
}
