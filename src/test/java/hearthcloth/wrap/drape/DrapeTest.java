package hearthcloth.wrap.drape;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.tie.TiedFold;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The cloth of a tied box brought to rest. */
class DrapeTest {

    private static Fold tied(Tie tie, String gift) {
        Gift given = Gift.parse(gift, null);
        Length side = tie.smallestSquare(given, Length.cm(12));
        Length larger = side.plus(side.dividedBy(20, Rounding.UP));
        return TiedFold.of(tie.fit(given, Size.square(larger), Length.cm(12)));
    }

    @Test
    void the_same_fold_gives_the_same_mesh_to_the_last_bit() {
        Fold fold = tied(Tie.FOUR_CORNER, "box 30 x 26 x 12 cm");
        Drape first = Drape.of(fold, 13, () -> true).orElseThrow();
        Drape second = Drape.of(fold, 13, () -> true).orElseThrow();
        assertThat(second.mesh()).isEqualTo(first.mesh());
        assertThat(second.acceptance()).isEqualTo(first.acceptance());
    }

    @Test
    void what_nobody_wants_any_more_is_given_up() {
        assertThat(Drape.of(tied(Tie.FOUR_CORNER, "box 30 x 26 x 12 cm"), 13, () -> false))
                .isEmpty();
    }

    @Test
    void a_tie_without_hands_keeps_its_facets() {
        assertThat(Drape.of(tied(Tie.ONE_BOTTLE, "bottle 7.5 x 30 cm"), 13, () -> true))
                .isEmpty();
    }

    /** Ten boxes as far apart as the first ten seeds make them: most are fit to be shown. */
    @Test
    @Tag("long")
    void most_boxes_come_to_rest_within_the_limits() {
        int held = 0;
        for (int seed = 1; seed <= 10; seed++) {
            Random chance = new Random(seed);
            double along = 80 + 370 * chance.nextDouble();
            double across = along * (0.4 + 0.6 * chance.nextDouble());
            double height = along * (0.1 + 0.5 * chance.nextDouble());
            String gift = String.format(Locale.ROOT, "box %.0f x %.0f x %.0f mm", along, across, height);
            Optional<Drape> drape = Drape.of(tied(Tie.FOUR_CORNER, gift), 41, () -> true);
            held += drape.filter(made -> made.acceptance().holds()).isPresent() ? 1 : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo(5);
    }
}
