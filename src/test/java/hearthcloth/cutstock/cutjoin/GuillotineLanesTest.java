package hearthcloth.cutstock.cutjoin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.LaneKind;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.cutstock.join.StripSource;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** {@link GuillotineLanes} as a {@link StripSource}, and the {@link LaneState} it keeps. */
class GuillotineLanesTest {

    private static final FabricSets RED = FabricSets.of(0);
    private static final List<LaneKind> KINDS = List.of(
            new LaneKind(30, BarTurn.ANY, RED),
            new LaneKind(20, BarTurn.ANY, RED),
            new LaneKind(30, BarTurn.ALONG, RED));
    private static final int ALONG = 0;
    private static final int ACROSS = 1;

    private static GuillotineLanes lanes(int slots, StockPiece... pieces) {
        return new GuillotineLanes(
                FreePlots.bare(List.of(pieces)).plots(),
                KINDS,
                slots,
                50,
                20_000,
                SearchParameters.standard().costs());
    }

    private static StockPiece piece(long width, long length) {
        return new StockPiece(0, width, length, 0, false);
    }

    @Test
    void a_bare_piece_offers_lanes_along_and_across() {
        GuillotineLanes lanes = lanes(9, piece(100, 200));
        long[] used = new long[9];

        assertThat(lanes.slots()).isEqualTo(9);
        assertThat(lanes.places(0)).containsExactly(ACROSS, ALONG);
        assertThat(lanes.places(2)).containsExactly(ALONG);
        assertThat(lanes.offered(0, ALONG, used)).isEqualTo(200);
        assertThat(lanes.copies(0, ALONG, used)).isEqualTo(3);
        assertThat(lanes.offered(0, ACROSS, used)).isEqualTo(100);
        assertThat(lanes.copies(0, ACROSS, used)).isEqualTo(6);
        assertThat(lanes.offered(2, ACROSS, used)).isZero();
        assertThat(lanes.passingLimit()).isEqualTo(lanes.firstPassing());
    }

    @Test
    void a_piece_too_narrow_or_of_another_fabric_is_no_place() {
        assertThat(lanes(3, piece(29, 29)).places(0)).isEmpty();
        assertThat(lanes(3, piece(30, 29)).places(0)).containsExactly(ALONG);
        assertThat(lanes(3, new StockPiece(0, 90, 90, 1, false)).places(0)).isEmpty();
    }

    @Test
    void lanes_cut_side_by_side_leave_less_each_time() {
        GuillotineLanes lanes = lanes(9, piece(100, 200));
        long[] used = new long[9];

        int first = lanes.open(0, ALONG, used);
        assertThat(lanes.length(first)).isEqualTo(200);
        assertThat(lanes.whole(first)).isEqualTo(200);
        assertThat(lanes.copies(0, ALONG, used)).isEqualTo(2);
        assertThat(lanes.serves(first, 0)).isTrue();
        assertThat(lanes.serves(first, 1)).isFalse();
        assertThat(lanes.origin(first)).isZero();
        // across, lanes are now only as long as the 70 that are left
        assertThat(lanes.offered(0, ACROSS, used)).isEqualTo(70);
        lanes.open(0, ALONG, used);
        lanes.open(0, ALONG, used);
        assertThat(lanes.offered(0, ALONG, used)).isZero();
        assertThat(lanes.open(0, ALONG, used)).isEqualTo(-1);
        assertThat(lanes.offered(0, ACROSS, used)).isEqualTo(10);
    }

    @Test
    void what_is_free_beside_a_lane_may_be_divided_the_other_way() {
        GuillotineLanes lanes = lanes(9, piece(100, 200));
        long[] used = new long[9];
        lanes.open(0, ALONG, used);

        int across = lanes.open(0, ACROSS, used);

        assertThat(lanes.length(across)).isEqualTo(70);
        assertThat(lanes.offered(0, ALONG, used)).isZero();
        lanes.close(across);
        assertThat(lanes.offered(0, ALONG, used)).isEqualTo(200);
    }

    @Test
    void the_unused_end_of_a_lane_is_a_place_for_other_lanes() {
        GuillotineLanes lanes = lanes(9, piece(30, 200));
        long[] used = new long[9];
        int lane = lanes.open(0, ALONG, used);
        used[lane] = 120;
        int along = lanes.firstPassing();
        int across = along + 1;

        assertThat(lanes.isTail(along)).isTrue();
        // its own kind is served by the lane itself; a narrower lane may lie along, any across
        assertThat(lanes.offered(0, along, used)).isZero();
        assertThat(lanes.offered(1, along, used)).isEqualTo(80);
        assertThat(lanes.offered(1, across, used)).isEqualTo(30);
        assertThat(lanes.copies(1, across, used)).isEqualTo(4);
        lanes.open(1, across, used);
        assertThat(lanes.length(lane)).isEqualTo(180);
        assertThat(lanes.whole(lane)).isEqualTo(200);
        assertThat(lanes.copies(1, across, used)).isEqualTo(3);
    }

    @Test
    void a_cut_is_paid_for_where_one_is_needed() {
        GuillotineLanes lanes = lanes(9, piece(100, 200), piece(30, 300));
        long[] used = new long[9];

        assertThat(lanes.openingCost(0, ALONG, used)).isEqualTo(0.02);
        assertThat(lanes.openingCost(0, 2, used)).isZero();
        int lane = lanes.open(0, ALONG, used);
        assertThat(lanes.openingCost(0, ACROSS, used)).isEqualTo(0.04);

        // one part of all the lane: one cut, which the part pays for; the piece is touched
        used[lane] = 200;
        assertThat(lanes.cost(used)).isCloseTo(0.004, within(1e-12));
        // a cut more at its end, and 50 x 30 are lost
        used[lane] = 150;
        assertThat(lanes.cost(used)).isCloseTo(0.02 + 0.01 * 1500 / 20_000 + 0.004, within(1e-12));
        // the last one uses the piece up: a cut less than lanes, and nothing beside them
        used[lane] = 200;
        lanes.open(0, ALONG, used);
        int third = lanes.open(0, ALONG, used);
        used[third] = 200;
        used[third - 1] = 200;
        assertThat(lanes.cost(used)).isCloseTo(0.01 * 10 * 200 / 20_000 + 0.004, within(1e-12));
    }

    private static List<Long> offers(GuillotineLanes lanes, long[] used) {
        List<Long> offers = new ArrayList<>();
        for (int kind = 0; kind < KINDS.size(); kind++) {
            for (int place = 0; place < lanes.passingLimit(); place++) {
                long offered = lanes.offered(kind, place, used);
                offers.add(offered);
                offers.add(offered > 0 ? (long) lanes.copies(kind, place, used) : 0L);
            }
        }
        return offers;
    }

    private static List<Integer> open(GuillotineLanes lanes) {
        return IntStream.range(0, lanes.openLimit())
                .filter(lanes::isOpen)
                .boxed()
                .toList();
    }

    @Test
    void a_lane_opened_is_as_long_as_was_offered_and_closed_again_leaves_every_offer_as_it_was() {
        SplittableRandom chance = new SplittableRandom(15);
        for (int round = 0; round < 20; round++) {
            GuillotineLanes lanes = lanes(
                    12,
                    piece(40 + chance.nextInt(150), 40 + chance.nextInt(150)),
                    new StockPiece(1, 90, 70, 0, chance.nextBoolean()));
            long[] used = new long[12];
            List<Long> bare = offers(lanes, used);
            for (int step = 0; step < 40; step++) {
                List<Long> before = offers(lanes, used);
                int kind = chance.nextInt(KINDS.size());
                int place = chance.nextInt(lanes.passingLimit());
                long offered = lanes.offered(kind, place, used);
                lanes.save();
                int slot = lanes.open(kind, place, used);
                if (slot < 0) {
                    assertThat(offers(lanes, used)).isEqualTo(before);
                    continue;
                }
                assertThat(lanes.length(slot)).isEqualTo(offered);
                assertThat(lanes.serves(slot, kind)).isTrue();
                assertThat(lanes.origin(slot) == lanes.originOf(place) || place >= lanes.firstPassing())
                        .isTrue();
                if (chance.nextBoolean()) {
                    lanes.close(slot);
                    assertThat(offers(lanes, used)).isEqualTo(before);
                } else if (chance.nextInt(4) == 0) {
                    lanes.restore();
                    assertThat(offers(lanes, used)).isEqualTo(before);
                } else {
                    used[slot] = 1 + chance.nextLong(offered);
                }
            }
            // parts taken away in any order: a lane from whose end nothing is cut is given back first
            while (!open(lanes).isEmpty()) {
                List<Integer> all = open(lanes);
                int slot = all.get(chance.nextInt(all.size()));
                used[slot] = 0;
                if (lanes.length(slot) == lanes.whole(slot)) {
                    lanes.close(slot);
                }
            }
            assertThat(offers(lanes, used)).isEqualTo(bare);
        }
    }

    private static LaneState state() {
        LaneState state = new LaneState(2, 3);
        state.gap[0] = 100;
        state.gap[1] = 80;
        return state;
    }

    @Test
    void rectangles_are_cut_off_while_there_are_entries() {
        LaneState state = state();

        assertThat(state.cut(1, 30)).isEqualTo(2);
        assertThat(state.gap[1]).isEqualTo(50);
        assertThat(state.kids[1]).isEqualTo(1);
        assertThat(state.parent[2]).isEqualTo(1);
        assertThat(state.plot[2]).isEqualTo(1);
        assertThat(state.extent[2]).isEqualTo(30);
        assertThat(state.limit).isEqualTo(3);
        state.gap[2] = 60;
        assertThat(state.cut(2, 20)).isEqualTo(3);
        assertThat(state.plot[3]).isEqualTo(1);
        assertThat(state.cut(0, 20)).isEqualTo(4);
        assertThat(state.cut(0, 20)).isEqualTo(-1);
        assertThat(state.gap[0]).isEqualTo(80);
    }

    @Test
    void a_rectangle_given_back_takes_those_with_it_that_were_cut_for_it_alone() {
        LaneState state = state();
        int level = state.cut(0, 60);
        state.gap[level] = 90;
        int one = state.cut(level, 40);
        int other = state.cut(level, 30);

        state.giveBack(one);
        assertThat(state.gap[level]).isEqualTo(60);
        assertThat(state.gap[0]).isEqualTo(40);
        assertThat(state.parent[one]).isEqualTo(-1);
        assertThat(state.limit).isEqualTo(5);
        assertThat(state.cut(level, 10)).isEqualTo(one);
        state.giveBack(one);
        state.giveBack(other);
        assertThat(state.gap[0]).isEqualTo(100);
        assertThat(state.kids[0]).isZero();
        assertThat(state.limit).isEqualTo(2);
    }

    @Test
    void a_lane_stays_when_the_last_that_was_cut_off_it_is_given_back() {
        LaneState state = state();
        int lane = state.cut(0, 60);
        state.lane[lane] = true;
        state.gap[lane] = 90;
        int end = state.cut(lane, 40);

        state.giveBack(end);

        assertThat(state.parent[lane]).isZero();
        assertThat(state.gap[lane]).isEqualTo(90);
        assertThat(state.gap[0]).isEqualTo(40);
    }

    @Test
    void a_copy_of_a_state_is_the_same_even_over_a_fuller_one() {
        LaneState one = state();
        one.cut(1, 60);
        one.across[1] = true;
        LaneState other = state();
        other.cut(0, 10);
        other.cut(0, 10);
        other.cut(0, 10);

        other.copy(one);

        assertThat(other.limit).isEqualTo(3);
        assertThat(other.parent).isEqualTo(one.parent);
        assertThat(Arrays.copyOf(other.gap, 3)).isEqualTo(Arrays.copyOf(one.gap, 3));
        assertThat(other.kids).startsWith(0, 1, 0);
        assertThat(other.across[1]).isTrue();
        assertThat(other.plot[2]).isEqualTo(1);
        assertThat(other.extent[2]).isEqualTo(60);
        one.gap[1] = 0;
        assertThat(other.gap[1]).isEqualTo(20);
    }
}
