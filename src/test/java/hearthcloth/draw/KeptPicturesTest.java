package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures that are kept: {@link FabricPicture}, {@link ClothPhotograph}, and what {@link RefusedPictureException} says. */
class KeptPicturesTest {

    /** The left half red, the right half blue. */
    private static byte[] halves(int width, int height, String kind) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(0xc02020));
        pen.fillRect(0, 0, width / 2, height);
        pen.setColor(new Color(0x2020c0));
        pen.fillRect(width / 2, 0, width - width / 2, height);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, kind, out);
        return out.toByteArray();
    }

    private static BufferedImage read(byte[] jpeg) throws IOException {
        assertThat(jpeg[0] & 0xff).isEqualTo(0xff);
        assertThat(jpeg[1] & 0xff).isEqualTo(0xd8);
        return ImageIO.read(new ByteArrayInputStream(jpeg));
    }

    private static boolean isRed(BufferedImage image, int x, int y) {
        int rgb = image.getRGB(x, y);
        return (rgb >> 16 & 255) > 2 * (rgb & 255);
    }

    @Test
    void a_fabric_s_picture_is_the_square_in_the_middle_and_never_larger_than_it_was() throws IOException {
        BufferedImage large = read(FabricPicture.jpeg(halves(1600, 900, "png")));
        assertThat(large.getWidth()).isEqualTo(512);
        assertThat(large.getHeight()).isEqualTo(512);
        assertThat(isRed(large, 200, 256)).isTrue();
        assertThat(isRed(large, 312, 256)).isFalse();

        BufferedImage small = read(FabricPicture.jpeg(halves(100, 60, "jpeg")));
        assertThat(small.getWidth()).isEqualTo(60);
        assertThat(small.getHeight()).isEqualTo(60);
    }

    @Test
    void a_photograph_of_a_cloth_keeps_its_proportions_at_most_1280_pixels_long() throws IOException {
        BufferedImage kept = read(ClothPhotograph.jpeg(halves(2560, 1280, "jpeg")));
        assertThat(kept.getWidth()).isEqualTo(1280);
        assertThat(kept.getHeight()).isEqualTo(640);
        assertThat(isRed(kept, 600, 320)).isTrue();
        assertThat(isRed(kept, 680, 320)).isFalse();

        BufferedImage as = read(ClothPhotograph.jpeg(halves(300, 200, "png")));
        assertThat(as.getWidth()).isEqualTo(300);
        BufferedImage small = read(ClothPhotograph.small(ClothPhotograph.jpeg(halves(1000, 2000, "png"))));
        assertThat(small.getWidth()).isEqualTo(240);
        assertThat(small.getHeight()).isEqualTo(480);
    }

    @Test
    void what_is_no_picture_or_a_broken_one_or_too_large_is_refused_with_the_mend() throws IOException {
        byte[] whole = halves(300, 200, "png");
        assertThatThrownBy(() -> FabricPicture.jpeg("hello, cloth".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(RefusedPictureException.class)
                .hasMessage("This is no PNG or JPEG picture; export it as one of these.");
        assertThatThrownBy(() -> FabricPicture.jpeg(new byte[0])).isInstanceOf(RefusedPictureException.class);
        assertThatThrownBy(() -> FabricPicture.jpeg(Arrays.copyOf(whole, 60)))
                .isInstanceOf(RefusedPictureException.class)
                .hasMessageContaining("damaged");
        assertThatThrownBy(() -> FabricPicture.jpeg(Arrays.copyOf(whole, FabricPicture.MOST_BYTES + 1)))
                .isInstanceOf(RefusedPictureException.class)
                .hasMessageContaining("over 20 MB");
    }
}
