package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Direction;
import hearthcloth.plan.model.Patchwork.ScrapRule;
import hearthcloth.plan.model.Patchwork.ScrapWishes;
import hearthcloth.plan.model.Patchwork.Setting;
import hearthcloth.plan.model.Patchwork.Sizes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PatchworkReaderTest {

    private WishWords words = WishWords.NOTHING;

    @Test
    void without_a_word_of_scraps_or_blocks_a_hearth_and_rounds_are_wished() {
        assertThat(PatchworkReader.read(words, Door.SHELL)).isEmpty();
    }

    @Test
    void free_alone_is_scraps_and_with_rounds_a_log_cabin_among_scraps() {
        words = words.with(WishField.FREE, "yes");
        assertThat(PatchworkReader.read(words, Door.SHELL)).contains(Patchwork.free());
        words = words.with(WishField.ROUNDS, "3");
        assertThat(PatchworkReader.read(words, Door.SHELL).flatMap(Patchwork::blocks))
                .contains(new Blocks(1, 1, 3, Order.ROUND, Optional.empty()));
    }

    @Test
    void blocks_are_read_with_their_setting_order_and_rounds() {
        words = words.with(WishField.BLOCKS, "4 x 3");
        words = words.with(WishField.SETTING, "Barn raising");
        words = words.with(WishField.ORDER, "pairs");
        words = words.with(WishField.SCRAPS, "as-they-are");
        Blocks blocks = new Blocks(4, 3, 2, Order.PAIRS, Optional.of(Setting.BARN_RAISING));
        assertThat(PatchworkReader.read(words, Door.SHELL))
                .contains(new Patchwork(Optional.of(blocks), false, ScrapRule.AS_THEY_ARE));
    }

    @Test
    void what_cannot_be_read_is_said_with_its_mend() {
        words = words.with(WishField.BLOCKS, "many");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("3 x 3");
        words = words.with(WishField.BLOCKS, "30 x 30");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("12 x 12");
        words = words.with(WishField.BLOCKS, "3 x 3");
        words = words.with(WishField.SETTING, "upside down");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("straight furrow");
    }

    @Test
    void a_setting_without_blocks_and_bars_with_scraps_are_refused() {
        words = words.with(WishField.SETTING, "barn raising");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--blocks");
        words = WishWords.NOTHING;
        words = words.with(WishField.FREE, "yes");
        words = words.with(WishField.BARS, "3 in");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--bars");
    }

    @Test
    void what_is_wished_of_scraps_is_read() {
        words = words.with(WishField.FREE, "yes")
                .with(WishField.WITH, "3, 12-2")
                .with(WishField.MOST_TRIM, "1/2 in")
                .with(WishField.SIZES, "even");
        assertThat(PatchworkReader.read(words, Door.SHELL).map(Patchwork::wishes))
                .contains(new ScrapWishes(
                        List.of("3", "12-2"),
                        Optional.empty(),
                        Optional.of(Length.inches(1, 2)),
                        Sizes.EVEN,
                        Direction.ANY));
        words = WishWords.NOTHING.with(WishField.FREE, "yes").with(WishField.MIDDLE, "7");
        assertThat(PatchworkReader.read(words, Door.SHELL)
                        .flatMap(asked -> asked.wishes().middle()))
                .contains("7");
    }

    @Test
    void wishes_of_scraps_that_cannot_be_kept_are_said() {
        words = words.with(WishField.BANDS, "across");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--free");
        words = words.with(WishField.FREE, "yes").with(WishField.WITH, "3");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--bands");
        words = WishWords.NOTHING.with(WishField.FREE, "yes").with(WishField.MOST_TRIM, "much");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--most-trim");
        words = WishWords.NOTHING.with(WishField.BLOCKS, "2 x 2").with(WishField.SIZES, "even");
        assertThatThrownBy(() -> PatchworkReader.read(words, Door.SHELL)).hasMessageContaining("--sizes");
    }
}
