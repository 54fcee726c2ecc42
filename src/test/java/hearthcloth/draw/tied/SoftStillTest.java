package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.colour.Colour;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.LeanSvg;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.measure.Ruler;
import hearthcloth.words.speech.Voice;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Still pictures as soft cloth: the same each time, small on paper, and showing of each fabric what the facets show. */
class SoftStillTest {

    private static final Voice VOICE = Voice.english(Ruler.MILLIMETRES);

    /** Of the hearth and both faces' bars, in the corner view, of all that is seen. */
    private static final double NEAR = 0.06;

    private static TiedGift gift(Pictured gift) {
        return TiedGift.of(gift.cloth(), gift.fold(), Pictured.LOOK);
    }

    static List<Pictured> some() {
        return Pictured.all()
                .filter(one -> List.of("FOUR_CORNER", "EDGE_ALONG_EDGE", "TWO_BOTTLES", "ROUND", "BOOKS")
                        .contains(one.tie().name()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("some")
    void it_shows_of_each_fabric_what_the_facets_show(Pictured gift) throws IOException {
        List<Picture> soft = gift(gift).softly(200).stills(90, 90, VOICE.printing());
        List<Picture> flat = gift(gift).stills(90, 90, VOICE.printing());
        assertThat(soft.get(2).marks()).hasSize(1).first().isInstanceOf(Mark.Dotted.class);
        for (String fabric : Pictured.LOOK.fabrics().keySet()) {
            Colour colour = Pictured.LOOK.look(fabric).ground();
            assertThat(share(soft.get(2), colour)).as(fabric).isCloseTo(share(flat.get(2), colour), within(NEAR));
        }
    }

    /** The share of the coloured dots that is nearest to a fabric in hue. */
    private static double share(Picture picture, Colour colour) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(picture, 60)));
        int all = 0;
        int own = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y) & 0xffffff;
                Colour here = Colour.of(rgb);
                if (here.lab().chroma() > 5) {
                    all++;
                    own += nearest(here).equals(colour) ? 1 : 0;
                }
            }
        }
        return (double) own / all;
    }

    private static Colour nearest(Colour here) {
        Colour best = Colour.BLACK;
        double least = Double.POSITIVE_INFINITY;
        for (String fabric : Pictured.LOOK.fabrics().keySet().stream().sorted().toList()) {
            Colour one = Pictured.LOOK.look(fabric).ground();
            double a = one.lab().a() / one.lab().lightness()
                    - here.lab().a() / here.lab().lightness();
            double b = one.lab().b() / one.lab().lightness()
                    - here.lab().b() / here.lab().lightness();
            if (a * a + b * b < least) {
                least = a * a + b * b;
                best = one;
            }
        }
        return best;
    }

    @ParameterizedTest
    @MethodSource("some")
    void it_is_the_same_each_time_and_small_on_paper(Pictured gift) {
        Picture views = gift(gift).softly(400).views(180, 88, PrintSizes.SMALL, VOICE);
        byte[] pdf = PdfWriter.write("Tied", "en", List.of(views));
        assertThat(pdf.length).isLessThan(60_000);
        assertThat(pdf)
                .isEqualTo(PdfWriter.write(
                        "Tied", "en", List.of(gift(gift).softly(400).views(180, 88, PrintSizes.SMALL, VOICE))));
    }

    @ParameterizedTest
    @MethodSource("some")
    void as_a_file_it_needs_nothing_else(Pictured gift) throws IOException {
        String svg = LeanSvg.write(
                gift(gift).softly(200).stills(90, 90, VOICE.printing()).get(2));
        assertThat(svg).contains("href=\"data:image/png;base64,").doesNotContain("https:");
        String png = svg.substring(svg.indexOf("base64,") + 7, svg.indexOf("\"/>"));
        assertThat(ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(png)))
                        .getWidth())
                .isBetween(50, 200);
    }
}
