package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every picture, sheet or file name that cannot be used is refused with a mend, and nothing is written. */
class BadPhotoTest {

    @TempDir
    private Path folder = Path.of("");

    private Path csv() {
        return folder.resolve("scraps.csv");
    }

    @AfterEach
    void nothingIsWritten() {
        assertThat(csv()).doesNotExist();
    }

    private Typed read(byte[] picture) {
        return Typed.withInput(picture, "read", "-", "--sheet", "a4", "--out", csv().toString());
    }

    private static byte[] blank(int width, int height) throws IOException {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var pen = image.createGraphics();
        pen.setColor(new Color(0x7a6a58));
        pen.fillRect(0, 0, width, height);
        pen.dispose();
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    @Test
    void what_is_no_photograph_is_called_so() throws IOException {
        read("\0\0\0\u0018ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1))
                .refused("HEIC", "JPEG");
        read("fabric,width,length".getBytes(StandardCharsets.UTF_8)).refused("not a photograph in JPEG or PNG form");
        read(new byte[0]).refused("is empty");
        read(blank(640, 640)).refused("640 × 640", "2 megapixels");
    }

    @Test
    void a_picture_that_claims_to_be_vast_is_not_unpacked() throws IOException {
        byte[] png = blank(2000, 1500);
        png[16] = 0;
        png[17] = 1;
        png[20] = 0;
        png[21] = 1;
        read(png).refused("most read here is 50");
    }

    @Test
    void a_picture_without_a_sheet_is_refused_with_how_to_take_it() throws IOException {
        read(blank(2000, 1500)).refused("The picture cannot be read", "No A4 was found");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--sheet | wombat | --sheet:",
                "--sheet | 1 x 1 cm | too small to measure by",
                "--sheet | 12 x 18 parsec | has no unit",
                "--unit | furlong | write in or cm",
                "--out | scraps.txt | ends with .csv",
                "--picture | read.jpg | ends with .png",
                "--picture | no/such/folder/read.png | there is no folder",
                "--nonsense | 3 | There is no option"
            })
    void what_was_mistyped_is_named_with_a_mend(String option, String value, String said) {
        String sheet = option.equals("--sheet") ? value : "a4";
        String out = option.equals("--out") ? folder.resolve(value).toString() : csv().toString();
        if (option.equals("--sheet") || option.equals("--out")) {
            Typed.words("read", "-", "--sheet", sheet, "--out", out).refused(said);
        } else {
            Typed.words("read", "-", "--sheet", sheet, "--out", out, option, value)
                    .refused(said);
        }
    }

    @Test
    void files_that_are_missing_or_in_the_way_are_named() throws IOException {
        String out = csv().toString();
        Typed.words("read", folder.resolve("none.jpg").toString(), "--sheet", "a4", "--out", out)
                .refused("There is no file", "none.jpg");
        Typed.words("read", folder.toString(), "--sheet", "a4", "--out", out).refused("is a folder");
        Typed.words(
                        "read",
                        "-",
                        "--sheet",
                        "a4",
                        "--out",
                        folder.resolve("no/scraps.csv").toString())
                .refused("there is no folder");
        Typed.words("read", "-", "--sheet", "a4").refused("Something is missing: --out FILE.csv");
        Typed.words("read", "-", "--out", out).refused("Something is missing: --sheet SHEET");
        Path folderLikeAFile = Files.createDirectory(folder.resolve("in-the-way.csv"));
        Typed.words("read", "-", "--sheet", "a4", "--out", folderLikeAFile.toString())
                .refused("is a folder");
    }
}
