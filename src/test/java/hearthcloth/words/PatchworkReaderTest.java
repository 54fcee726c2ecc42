package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.ScrapRule;
import hearthcloth.plan.model.Patchwork.Setting;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PatchworkReaderTest {

    private final WishOptions options = new WishOptions();

    @Test
    void without_a_word_of_scraps_or_blocks_a_hearth_and_rounds_are_wished() {
        assertThat(PatchworkReader.read(options)).isEmpty();
    }

    @Test
    void free_alone_is_scraps_and_with_rounds_a_log_cabin_among_scraps() {
        options.free = true;
        assertThat(PatchworkReader.read(options)).contains(Patchwork.free());
        options.rounds = "3";
        assertThat(PatchworkReader.read(options).flatMap(Patchwork::blocks))
                .contains(new Blocks(1, 1, 3, Order.ROUND, Optional.empty()));
    }

    @Test
    void blocks_are_read_with_their_setting_order_and_rounds() {
        options.blocks = "4 x 3";
        options.setting = "Barn raising";
        options.order = "pairs";
        options.scraps = "as-they-are";
        Blocks blocks = new Blocks(4, 3, 2, Order.PAIRS, Optional.of(Setting.BARN_RAISING));
        assertThat(PatchworkReader.read(options))
                .contains(new Patchwork(Optional.of(blocks), false, ScrapRule.AS_THEY_ARE));
    }

    @Test
    void what_cannot_be_read_is_said_with_its_mend() {
        options.blocks = "many";
        assertThatThrownBy(() -> PatchworkReader.read(options)).hasMessageContaining("3 x 3");
        options.blocks = "30 x 30";
        assertThatThrownBy(() -> PatchworkReader.read(options)).hasMessageContaining("12 x 12");
        options.blocks = "3 x 3";
        options.setting = "upside down";
        assertThatThrownBy(() -> PatchworkReader.read(options)).hasMessageContaining("straight furrow");
    }

    @Test
    void a_setting_without_blocks_and_bars_with_scraps_are_refused() {
        options.setting = "barn raising";
        assertThatThrownBy(() -> PatchworkReader.read(options)).hasMessageContaining("--blocks");
        options.setting = null;
        options.free = true;
        options.bars = "3 in";
        assertThatThrownBy(() -> PatchworkReader.read(options)).hasMessageContaining("--bars");
    }
}
