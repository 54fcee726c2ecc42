package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Figure;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.store.json.Json;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The heap that is planned from: its fabrics look as her pictures of them show. */
class PicturedStashTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Fabric SHEET = new Fabric("Old sheet", Colour.of(0x777777), Fabric.Faces.SAME, Fabric.Nap.ANY);

    private final Store store;

    PicturedStashTest(@TempDir Path folder) {
        store = Store.open(folder.resolve("workroom.db"), CLOCK);
        store.stash()
                .edit(new StashEdit(
                        "add",
                        List.of(),
                        List.of(
                                new Piece("1", SHEET, Size.square(Length.cm(30)), Piece.Washed.YES, 1),
                                new Piece(
                                        "2", SHEET.called("Other"), Size.square(Length.cm(30)), Piece.Washed.NO, 2))));
    }

    /** Stripes of 16 pixels on 192: twelve stripes. */
    private static SwatchBook.Swatch striped(int one, int other, Length across) throws IOException {
        BufferedImage picture = new BufferedImage(192, 192, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 192; y++) {
            for (int x = 0; x < 192; x++) {
                picture.setRGB(x, y, x / 16 % 2 == 0 ? one : other);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return new SwatchBook.Swatch("image/png", Base64.getEncoder().encodeToString(bytes.toByteArray()), across);
    }

    private Fabric sheet() {
        return store.atHand().stash().fabric("Old sheet").orElseThrow();
    }

    @Test
    void a_picture_of_a_figured_fabric_counts_from_when_it_is_kept_until_it_is_taken_away() throws IOException {
        assertThat(sheet().figure()).isEmpty();

        store.swatches().keep("Old sheet", striped(0, 0xffffff, Length.cm(10)));
        Figure figure = sheet().figure().orElseThrow();
        assertThat(figure.mean().lightness()).isCloseTo(50, within(0.01));
        assertThat(sheet().mean()).isEqualTo(figure.mean());
        assertThat(figure.repeatMm()).isCloseTo(2 * 100 / 11.0, within(1e-9));
        assertThat(store.atHand().stash().fabric("Other").orElseThrow().figure())
                .isEmpty();

        store.swatches().keep("Old sheet", striped(0, 0xffffff, Length.cm(20)));
        assertThat(sheet().figure().orElseThrow().repeatMm()).isCloseTo(2 * 200 / 11.0, within(1e-9));

        store.swatches().keep("Old sheet", striped(0x808080, 0x808080, Length.cm(20)));
        assertThat(sheet().figure()).isEmpty();
        assertThat(sheet().mean()).isEqualTo(SHEET.colour().lab());

        store.swatches().keep("Old sheet", striped(0, 0xffffff, Length.cm(20)));
        store.swatches().remove("Old sheet");
        assertThat(sheet().figure()).isEmpty();
    }

    @Test
    void a_picture_that_cannot_be_read_leaves_the_fabric_as_it_is_called() {
        store.swatches().keep("Old sheet", new SwatchBook.Swatch("image/jpeg", "AAAA", Length.cm(10)));
        store.swatches().keep("Other", new SwatchBook.Swatch("image/jpeg", "no base 64!", Length.cm(10)));
        assertThat(sheet()).isEqualTo(SHEET);
        assertThat(sheet().figure()).isEmpty();
        assertThat(store.atHand().stash().pieces()).hasSize(2);
    }

    /** Whether there is a picture does not make it another fabric: pieces are found by what she says of them. */
    @Test
    void a_fabric_with_a_picture_is_the_same_fabric_and_is_kept_with_what_the_picture_shows() throws IOException {
        store.swatches().keep("Old sheet", striped(0, 0xffffff, Length.cm(10)));
        assertThat(sheet()).isEqualTo(SHEET).hasSameHashCodeAs(SHEET).hasToString(SHEET.toString());
        assertThat(store.stash().whole().pieces())
                .isEqualTo(store.atHand().stash().pieces());

        String kept = Json.text(sheet());
        assertThat(Json.read(kept, Fabric.class).figure()).isEqualTo(sheet().figure());
        assertThat(Json.text(SHEET)).doesNotContain("figure");
        assertThat(Json.read(Json.text(SHEET), Fabric.class).figure()).isEmpty();
    }

    @Test
    void a_fabric_is_the_same_only_with_the_same_name_colour_faces_nap_and_wrong_side() {
        assertThat(SHEET.called("Other")).isNotEqualTo(SHEET);
        assertThat(SHEET.seen(colour -> Colour.of(1))).isNotEqualTo(SHEET);
        assertThat(new Fabric("Old sheet", SHEET.colour(), Fabric.Faces.RIGHT, Fabric.Nap.ANY))
                .isNotEqualTo(SHEET);
        assertThat(new Fabric("Old sheet", SHEET.colour(), Fabric.Faces.SAME, Fabric.Nap.LENGTHWISE))
                .isNotEqualTo(SHEET);
        assertThat(new Fabric(
                        "Old sheet",
                        SHEET.colour(),
                        Fabric.Faces.SAME,
                        Fabric.Nap.ANY,
                        java.util.Optional.of(Colour.of(1))))
                .isNotEqualTo(SHEET);
    }
}
