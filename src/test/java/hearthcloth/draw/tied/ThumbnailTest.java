package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@link Thumbnail}: the tied gift as a few hundred signs. */
class ThumbnailTest {

    private static final Pattern BOX = Pattern.compile("<svg viewBox=\"0 0 ([0-9]+) ([0-9]+)\"");

    @ParameterizedTest
    @MethodSource("hearthcloth.draw.tied.Pictured#all")
    void of_every_tie_is_a_small_picture_with_the_cloth_s_colours_and_nothing_that_runs(Pictured pictured) {
        TiedGift gift = TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK);

        String tied = Thumbnail.of(gift);
        Matcher box = BOX.matcher(tied);

        assertThat(box.find()).isTrue();
        assertThat(Integer.parseInt(box.group(1))).isPositive();
        assertThat(tied).endsWith("</svg>").contains("fill=\"#").doesNotContain("<script", "href", "NaN", "Infinity");
    }

    @ParameterizedTest
    @MethodSource("hearthcloth.draw.tied.Pictured#all")
    void a_file_is_the_same_picture_that_stands_by_itself(Pictured pictured) {
        TiedGift gift = TiedGift.of(pictured.cloth(), pictured.fold(), Pictured.LOOK);

        assertThat(Thumbnail.file(gift))
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                .doesNotContain("class=")
                .hasSizeGreaterThan(Thumbnail.of(gift).length());
        assertThat(Thumbnail.laid(gift)).startsWith("<svg ").isNotEqualTo(Thumbnail.of(gift));
    }
}
