package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.web.gift.WishForm;
import hearthcloth.words.Language;
import hearthcloth.work.Purpose;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shell and the pages have one reader of wishes: the same bad wish is answered with the same sentence. */
class BothDoorsTest {

    private static final Stash STASH = ((StashFile.Read)
                    StashFile.read("fabric,width,length\nKelp,44 in,2 yd\nFog,9 in,9 in", Optional.empty()))
            .stash();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hearth | 900 in",
                "hearth | 1/8 in",
                "hearth | wide",
                "hearth | 1 in finished by 3",
                "bars | 900 in",
                "bars | 5 in, x",
                "bars | 1/4 in",
                "rounds | 0",
                "rounds | 41",
                "rounds | many",
                "order | sideways",
                "slack | 5 in",
                "slack | little",
            })
    void the_same_bad_wish_gets_the_same_sentence_at_both_doors(String field, String text) {
        Purpose gift = new Purpose("box 12 x 8 x 3 in", "", "");
        Usual usual = Usual.of(Ruler.EIGHTHS);
        Optional<GiftWish> wished = GiftWish.read(gift.gift(), null, null);
        WishWords words = WishWords.NOTHING.with(WishField.valueOf(field.toUpperCase(java.util.Locale.ROOT)), text);
        BadInputException shell = catchThrowableOfType(
                BadInputException.class, () -> new WishReader(words, STASH, usual, Door.SHELL).wish(wished));
        WishForm form = WishForm.read(name -> Map.of(field, text).getOrDefault(name, ""), List.of());
        MeasureException page = catchThrowableOfType(MeasureException.class, () -> form.wish(gift, usual, STASH, 4));
        assertThat("--" + page.getMessage()).isEqualTo(String.join(" ", shell.in(Language.ENGLISH)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"6 in finished", "14 x 12 in", "stash", "14"})
    void the_same_good_wish_is_read_the_same_at_both_doors(String hearth) {
        Usual usual = Usual.of(Ruler.EIGHTHS);
        WishForm form = WishForm.read(name -> name.equals("hearth") ? hearth : "", List.of());
        assertThat(form.wish(Purpose.NOTHING, usual, STASH, 4))
                .isEqualTo(new WishReader(WishWords.NOTHING.with(WishField.HEARTH, hearth), STASH, usual, Door.SHELL)
                        .wish(Optional.empty()));
    }
}
