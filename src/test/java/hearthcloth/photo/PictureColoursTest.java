package hearthcloth.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The main colours of pictures painted with known colours. */
class PictureColoursTest {

    private static final List<Colour> PAINTED = List.of(Colour.of(0x4b5d3a), Colour.of(0xb9c4a3), Colour.of(0xc8342b));

    /** Half, three tenths and a fifth of three colours, each pixel a little off. */
    private static byte[] picture(int off) throws IOException {
        Random random = new Random(21);
        BufferedImage image = new BufferedImage(480, 320, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 320; y++) {
            for (int x = 0; x < 480; x++) {
                Colour colour = PAINTED.get(x < 240 ? 0 : x < 384 ? 1 : 2);
                int by = off == 0 ? 0 : random.nextInt(2 * off + 1) - off;
                image.setRGB(x, y, (colour.red() + by) << 16 | (colour.green() + by) << 8 | (colour.blue() + by));
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    @Test
    void three_painted_colours_are_found_with_their_shares_the_largest_first() throws IOException {
        for (int off : new int[] {0, 12}) {
            List<PictureColours.Main> found = PictureColours.of(picture(off), 3);
            assertThat(found).hasSize(3);
            double[] shares = {0.5, 0.3, 0.2};
            for (int i = 0; i < 3; i++) {
                Lab painted = PAINTED.get(i).lab();
                assertThat(found.get(i).colour().lab().difference(painted)).isLessThan(3);
                assertThat(found.get(i).share()).isCloseTo(shares[i], within(0.01));
            }
        }
    }

    @Test
    void of_one_colour_there_is_one_and_what_is_no_picture_is_refused() throws IOException {
        BufferedImage image = new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        assertThat(PictureColours.of(out.toByteArray(), 6)).containsExactly(new PictureColours.Main(Colour.BLACK, 1));
        assertThatThrownBy(() -> PictureColours.of(new byte[] {1, 2, 3}, 6))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
