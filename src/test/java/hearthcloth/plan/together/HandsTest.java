package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@link Hands}: everything is dealt, to each by need, lights and darks by themselves. */
class HandsTest {

    private static final double MIDDLE = 55;

    private static boolean isDark(Piece piece) {
        return piece.fabric().colour().lab().lightness() < MIDDLE;
    }

    private static Map<Integer, Double> needs(double... needs) {
        Map<Integer, Double> by = new LinkedHashMap<>();
        for (double need : needs) {
            by.put(3 * by.size() + 1, need);
        }
        return by;
    }

    private static double area(List<Piece> hand, Predicate<Piece> some) {
        return hand.stream().filter(some).mapToDouble(Piece::areaMm2).sum();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void every_piece_is_dealt_once_and_nobody_is_ahead_by_more_than_one_piece(long seed) {
        List<Piece> pieces = Stashes.scraps(40, seed).pieces();
        Map<Integer, Double> needs = needs(1, 2, 0.5, 1);
        Map<Integer, List<Piece>> hands = new Hands(MIDDLE, needs).dealt(pieces, new SplittableRandom(seed));

        assertThat(hands.keySet()).containsExactlyElementsOf(needs.keySet());
        List<Piece> all = new ArrayList<>();
        hands.values().forEach(all::addAll);
        assertThat(all).containsExactlyInAnyOrderElementsOf(pieces);
        for (Predicate<Piece> some : List.<Predicate<Piece>>of(HandsTest::isDark, piece -> !isDark(piece))) {
            double largest = pieces.stream()
                    .filter(some)
                    .mapToDouble(Piece::areaMm2)
                    .max()
                    .orElseThrow();
            needs.forEach((one, need) -> needs.forEach((other, needed) -> {
                double share = area(hands.getOrDefault(one, List.of()), some) / need;
                double others = area(hands.getOrDefault(other, List.of()), some) / needed;
                // the last piece it was dealt came to it when it had the least for its need
                assertThat(share - largest / need).isLessThanOrEqualTo(others + 1e-6);
            }));
        }
    }

    @Test
    void the_same_chance_deals_the_same_and_another_deals_otherwise() {
        List<Piece> pieces = Stashes.scraps(40, 5).pieces();
        Hands hands = new Hands(MIDDLE, needs(1, 1, 1));
        assertThat(hands.dealt(pieces, new SplittableRandom(1)))
                .isEqualTo(hands.dealt(pieces, new SplittableRandom(1)));
        assertThat(hands.dealt(pieces, new SplittableRandom(1)))
                .isNotEqualTo(hands.dealt(pieces, new SplittableRandom(2)));
    }

    @Test
    void nothing_to_deal_leaves_empty_hands() {
        assertThat(new Hands(MIDDLE, needs(1, 1)).dealt(List.of(), new SplittableRandom(1)))
                .isEqualTo(Map.of(1, List.of(), 4, List.of()));
    }
}
