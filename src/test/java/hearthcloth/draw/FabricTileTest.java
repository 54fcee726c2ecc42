package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.draw.fabric.FabricTile;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.stash.Fabric;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fabric drawn from its words: to scale, the same each time, and from across the room the colour it is called. */
class FabricTileTest {

    private static Fabric called(String name) {
        return new Fabric(name, Colour.named(name).orElseThrow(), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    @ParameterizedTest
    @CsvSource({
        "madder red check, 0.9",
        "blue ticking, 0.8",
        "small navy dots, 0.54",
        "large pink floral, 4.32",
        "teal birds print, 2.6",
        "green and brown linen, 0.8"
    })
    void a_motif_repeats_to_scale(String name, double inches) {
        Picture tile = FabricTile.of(called(name)).orElseThrow();
        assertThat(tile.width()).isCloseTo(25.4 * inches, within(1e-9));
        assertThat(FabricTile.of(called(name))).contains(tile);
    }

    @ParameterizedTest
    @ValueSource(strings = {"grey linen", "red cotton", "denim", "birdseye blue"})
    void plain_cloth_has_none(String name) {
        assertThat(FabricTile.of(called(name))).isEmpty();
    }

    @Test
    void both_colours_of_a_name_are_seen_and_a_colour_she_chose_wins() {
        Colour green = Colour.named("green").orElseThrow();
        Colour brown = Colour.named("brown").orElseThrow();
        assertThat(FabricTile.of(called("green and brown linen")).orElseThrow().marks())
                .extracting(Object::toString)
                .anyMatch(mark -> mark.contains(green.toString()))
                .anyMatch(mark -> mark.contains(brown.toString()));
        Fabric chosen = new Fabric("green and brown linen", Colour.of(0xffffff), Fabric.Faces.SAME, Fabric.Nap.ANY);
        assertThat(FabricTile.of(chosen)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"red check", "blue stripe", "grey plaid", "green gingham"})
    void from_across_the_room_it_is_the_colour_it_is_called(String name) throws IOException {
        Fabric fabric = called(name);
        byte[] png = PngWriter.write(FabricTile.of(fabric).orElseThrow(), 96);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        Lab mean = Lab.BLACK;
        int seen = 0;
        for (int x = 1; x < image.getWidth() - 1; x++) {
            for (int y = 1; y < image.getHeight() - 1; y++) {
                seen++;
                mean = mean.mixed(Colour.of(image.getRGB(x, y)).lab(), 1.0 / seen);
            }
        }
        assertThat(mean.difference(fabric.colour().lab())).isLessThan(12);
    }

    @Test
    void a_repeat_is_written_once_however_often_it_is_used() {
        Picture tile = FabricTile.of(called("large red floral")).orElseThrow();
        Sketch few = new Sketch();
        Sketch many = new Sketch();
        for (int i = 0; i < 200; i++) {
            Mark.Figured area = new Mark.Figured(
                    new Bounds(i % 20 * 10, i / 20 * 10, 9, 9).outline(), tile, Affine.scaled(0.2, 0, 0));
            many.add(area);
            if (i < 2) {
                few.add(area);
            }
        }
        Picture two = few.finished("two", 200, 100);
        Picture all = many.finished("many", 200, 100);
        assertThat(SvgWriter.writeBare(all).split("<pattern", -1)).hasSize(2);
        int grown =
                PdfWriter.write("many", "en", List.of(all)).length - PdfWriter.write("two", "en", List.of(two)).length;
        // 198 rectangles at well under 30 bytes each once packed
        assertThat(grown).isLessThan(6_000);
    }
}
