package hearthcloth.wrap;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against the table of docs/sources.md#trade-sizes. */
class TradeSizeTest {

    @Test
    void is_the_table_of_common_practice() {
        List<SourceTable.Row> rows = SourceTable.rows("furoshiki_sizes.csv");
        assertThat(TradeSize.values()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            TradeSize size = List.of(TradeSize.values()).get(i);
            assertThat(CheckedTie.cm(size.least())).isEqualTo(rows.get(i).number("side_min_cm"));
        }
    }

    @Test
    void finds_the_one_that_is_enough() {
        assertThat(TradeSize.enoughFor(Length.cm(69))).contains(TradeSize.NISHAKU);
        assertThat(TradeSize.enoughFor(Length.cm(240))).isEmpty();
    }
}
