package hearthcloth.photo.scene;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

class RefusalTest {

    @Test
    void heic_is_told_how_to_become_a_jpeg() {
        byte[] heic = Arrays.copyOf("\0\0\0\30ftypheic".getBytes(StandardCharsets.ISO_8859_1), 4000);

        assertThat(reason(heic)).contains("HEIC").contains("JPEG").contains("most compatible");
    }

    @Test
    void a_small_file_that_unfolds_to_gigapixels_is_refused_by_its_header() {
        assertThat(reason(pngHeader(60_000, 60_000))).contains("60000 × 60000").contains("50");
    }

    @Test
    void a_picture_too_small_to_measure_by_is_refused() throws IOException {
        assertThat(reason(Evaluation.jpeg(new BufferedImage(640, 480, BufferedImage.TYPE_3BYTE_BGR), 0.8f)))
                .contains("640 × 480")
                .contains("original size");
    }

    @Test
    void what_is_no_picture_is_refused_and_so_is_a_broken_one() throws IOException {
        byte[] whole = Evaluation.jpeg(new BufferedImage(2000, 1500, BufferedImage.TYPE_3BYTE_BGR), 0.8f);

        assertThat(reason("fabric,width\n".getBytes(StandardCharsets.UTF_8))).contains("JPEG or PNG");
        assertThat(reason(new byte[0])).contains("JPEG or PNG");
        assertThat(reason(Arrays.copyOf(whole, 300))).contains("damaged");
        assertThat(reason(pngHeader(2000, 1500))).contains("damaged");
    }

    @Test
    void a_jpeg_of_endless_scans_is_refused() throws IOException {
        byte[] jpeg = Evaluation.jpeg(new BufferedImage(2000, 1500, BufferedImage.TYPE_3BYTE_BGR), 0.8f);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg);
        for (int i = 0; i < 200; i++) {
            out.write(new byte[] {(byte) 0xff, (byte) 0xda});
        }

        assertThat(reason(out.toByteArray())).contains("no camera");
    }

    @Test
    void an_empty_floor_has_no_sheet() throws IOException {
        BufferedImage grey = new BufferedImage(2000, 1500, BufferedImage.TYPE_3BYTE_BGR);
        grey.createGraphics().fillRect(0, 0, 2000, 1500);

        assertThat(reason(Evaluation.jpeg(grey, 0.8f))).contains("No A4 was found");
    }

    @Test
    void a_picture_turned_by_its_exif_note_is_read_upright() throws IOException {
        Scene scene = Scenes.drawn(2100, new Scenes.Wish(Floor.Kind.PLAIN, 5, 2.2, 6, Scenes.A4));
        BufferedImage upright = scene.photograph();
        BufferedImage lying = new BufferedImage(
                /* width= */ upright.getHeight(), /* height= */ upright.getWidth(), BufferedImage.TYPE_3BYTE_BGR);
        for (int y = 0; y < upright.getHeight(); y++) {
            for (int x = 0; x < upright.getWidth(); x++) {
                lying.setRGB(y, upright.getWidth() - 1 - x, upright.getRGB(x, y));
            }
        }

        Reading reading =
                PhotoReader.read(exif(Evaluation.jpeg(lying, 0.8f), 6), ReferenceSheet.A4, ReadingProgress.NONE);

        assertThat(reading).isInstanceOf(Reading.Read.class);
        Reading.Read read = (Reading.Read) reading;
        assertThat(read.scale().pictureWidth()).isEqualTo(upright.getWidth());
        assertThat(new Verdict(scene, read, "turned").missed).isEmpty();
    }

    @Test
    void sheets_are_named_or_measured() {
        assertThat(ReferenceSheet.parse("A4")).isEqualTo(ReferenceSheet.A4);
        assertThat(ReferenceSheet.parse("letter").size().height()).isEqualTo(Length.inches(11));
        assertThat(ReferenceSheet.parse("12 x 18 in").size().width()).isEqualTo(Length.inches(12));
        Assertions.assertThatThrownBy(() -> ReferenceSheet.parse("1 cm")).isInstanceOf(MeasureException.class);
    }

    private static String reason(byte[] bytes) {
        Reading reading = PhotoReader.read(bytes, ReferenceSheet.A4, ReadingProgress.NONE);
        assertThat(reading).isInstanceOf(Reading.Refused.class);
        return ((Reading.Refused) reading).reason().english();
    }

    /** A PNG that says its size and then ends. */
    private static byte[] pngHeader(int width, int height) {
        ByteBuffer chunk = ByteBuffer.allocate(17);
        chunk.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
        chunk.put((byte) 8).put((byte) 2).put((byte) 0).put((byte) 0).put((byte) 0);
        CRC32 crc = new CRC32();
        crc.update(chunk.array());
        ByteBuffer out = ByteBuffer.allocate(33);
        out.put("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1)).putInt(13);
        out.put(chunk.array()).putInt((int) crc.getValue());
        return out.array();
    }

    /** The same JPEG with an EXIF block that says how it is turned. */
    private static byte[] exif(byte[] jpeg, int orientation) throws IOException {
        ByteBuffer block = ByteBuffer.allocate(4 + 2 + 6 + 26);
        block.putShort((short) 0xffe1).putShort((short) (2 + 6 + 26));
        block.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        block.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1);
        block.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        block.putInt(0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(block.array(), 0, block.position());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
