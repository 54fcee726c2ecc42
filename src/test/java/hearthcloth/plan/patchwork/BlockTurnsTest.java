package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.piecing.cabin.Cabin.Edge;
import hearthcloth.cutstock.piecing.cabin.Cabin.Log;
import hearthcloth.cutstock.piecing.cabin.Cabin.Tone;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Setting;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlockTurnsTest {

    private static BlockTurns of(Setting setting, int across, int down) {
        return new BlockTurns(new Blocks(across, down, 2, Order.ROUND, Optional.empty()), setting, 1);
    }

    /** The tone of the outermost bar on an edge of a block. */
    private static Tone rim(BlockTurns turns, int row, int column, Edge edge) {
        return turns.bars(row, column, true).stream()
                .filter(log -> log.edge() == edge)
                .reduce((inner, outer) -> outer)
                .map(Log::tone)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"STRAIGHT_FURROW, 5, 4", "SUNSHINE_AND_SHADOW, 6, 4", "BARN_RAISING, 6, 6", "BARN_RAISING, 4, 8"})
    void light_meets_light_and_dark_meets_dark_wherever_two_blocks_meet(Setting setting, int across, int down) {
        BlockTurns turns = of(setting, across, down);
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                if (column + 1 < across) {
                    assertThat(rim(turns, row, column, Edge.RIGHT)).isEqualTo(rim(turns, row, column + 1, Edge.LEFT));
                }
                if (row + 1 < down) {
                    assertThat(rim(turns, row, column, Edge.BOTTOM)).isEqualTo(rim(turns, row + 1, column, Edge.TOP));
                }
            }
        }
    }

    @Test
    void barn_raising_is_its_own_mirror_image_and_light_in_the_middle() {
        BlockTurns turns = of(Setting.BARN_RAISING, 6, 6);
        for (int row = 0; row < 6; row++) {
            for (int column = 0; column < 6; column++) {
                assertThat(rim(turns, row, column, Edge.RIGHT)).isEqualTo(rim(turns, row, 5 - column, Edge.LEFT));
                assertThat(rim(turns, row, column, Edge.TOP)).isEqualTo(rim(turns, 5 - row, column, Edge.BOTTOM));
            }
        }
        assertThat(rim(turns, 2, 2, Edge.RIGHT)).isEqualTo(Tone.LIGHT);
        assertThat(rim(turns, 2, 2, Edge.BOTTOM)).isEqualTo(Tone.LIGHT);
    }

    @Test
    void straight_furrow_runs_the_same_way_everywhere() {
        BlockTurns turns = of(Setting.STRAIGHT_FURROW, 4, 4);
        for (int i = 0; i < 16; i++) {
            assertThat(turns.turns(i / 4, i % 4) % 2).isZero();
        }
    }

    @Test
    void blocks_turned_at_will_lie_every_way() {
        BlockTurns turns = of(Setting.TURNED_AT_WILL, 6, 6);
        List<Integer> seen = java.util.stream.IntStream.range(0, 36)
                .map(i -> turns.turns(i / 6, i % 6))
                .distinct()
                .sorted()
                .boxed()
                .toList();
        assertThat(seen).containsExactly(0, 1, 2, 3);
    }
}
