package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How different two proposals are to count and to the eye, and what one of them is good at. */
class ProposalDistanceTest {

    /** Hearth of 6 in in bars of 3: a cloth of 12 in, on whose grid of 12 by 12 the hearth has 36 places. */
    private static final LayoutCandidate ONE = Trials.shape(Order.ROUND, 1, 48, 24);

    private static DraftTrial trial(LayoutCandidate shape, Scheme.Kind kind, Fabric hearth, Fabric bars) {
        return Trials.trial(shape, kind, hearth, bars);
    }

    @Test
    void two_pictures_are_as_far_apart_as_their_colours_are_on_the_mean() {
        DraftTrial plain = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        DraftTrial turned = trial(ONE, Scheme.Kind.FIELD, Trials.BLACK, Trials.WHITE);
        DraftTrial grey = trial(ONE, Scheme.Kind.FIELD, Trials.GREY, Trials.BLACK);

        assertThat(new LookDistance().between(plain, plain)).isZero();
        assertThat(new LookDistance().between(plain, turned)).isCloseTo(100, within(1e-6));
        double apart = 100 - Trials.GREY.colour().lab().lightness();
        assertThat(new LookDistance().between(plain, grey)).isCloseTo(36 / 144.0 * apart, within(0.05));
        assertThat(new LookDistance().between(grey, plain)).isEqualTo(new LookDistance().between(plain, grey));
    }

    /** So many proposals of any size. */
    private static Wish few(int proposals) {
        return new Wish(
                new Wish.Target(Optional.empty(), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), proposals, 1, Ruler.EIGHTHS));
    }

    /** The second differs from the first in its plan's name alone; the third is another picture, of one join more. */
    @Test
    void a_picture_far_from_the_first_comes_before_one_that_passes_for_it() {
        DraftTrial first = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        DraftTrial same = trial(
                Trials.shape(Order.PAIRS, 1, 48, 24), Scheme.Kind.ALL, Trials.fabric("Snow", 0xfdfdfd), Trials.BLACK);
        DraftTrial other = trial(Trials.shape(Order.ROUND, 1, 48, 24), Scheme.Kind.FRAMES, Trials.BLACK, Trials.WHITE);
        assertThat(new LookDistance().between(first, same)).isLessThan(LookDistance.SEEN);
        assertThat(new LookDistance().between(first, other)).isGreaterThan(3 * LookDistance.SEEN);

        List<Plan> two = ProposalSelection.byEye(
                List.of(first, same, other),
                few(2),
                ColourGoal.flat(Contrast.READS),
                kind -> kind == Scheme.Kind.ALL ? 1 : 0,
                0);
        assertThat(two).hasSize(2);
        assertThat(two.get(1).story().title().english()).startsWith("Frames");
        List<Plan> three = ProposalSelection.byEye(
                List.of(first, same, other), few(3), ColourGoal.flat(Contrast.READS), kind -> 0, 0);
        assertThat(three)
                .as("only where there is no other does one stand beside its like")
                .hasSize(3);
    }

    @Test
    void a_larger_cloth_of_the_same_picture_looks_the_same() {
        DraftTrial plain = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        DraftTrial twice = trial(Trials.shape(Order.ROUND, 1, 96, 48), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(new LookDistance().between(plain, twice)).isZero();
    }

    @Test
    void ways_in_which_two_cloths_differ_are_counted_and_colours_twice() {
        DraftTrial plain = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, plain)).isEmpty();
        assertThat(ProposalDistance.difference(plain, plain)).isZero();

        DraftTrial other = trial(ONE, Scheme.Kind.ALL, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, other)).containsExactly(ProposalDistance.Way.COLOURS);
        assertThat(ProposalDistance.difference(plain, other)).isEqualTo(2);

        DraftTrial pairs = trial(Trials.shape(Order.PAIRS, 1, 48, 24), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, pairs)).containsExactly(ProposalDistance.Way.ORDER);
        assertThat(ProposalDistance.difference(plain, pairs)).isEqualTo(1);

        DraftTrial rounds = trial(Trials.shape(Order.ROUND, 2, 48, 24), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, rounds))
                .containsExactly(ProposalDistance.Way.SIZE, ProposalDistance.Way.ROUNDS);
    }

    /** Bars of 24 eighths beside bars of 20 differ by a sixth, beside bars of 19 by more than a fifth. */
    @Test
    void widths_differ_where_a_bar_or_the_hearth_is_more_than_a_fifth_wider() {
        DraftTrial plain = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        DraftTrial little = trial(Trials.shape(Order.ROUND, 1, 56, 20), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, little)).isEmpty();
        DraftTrial more = trial(Trials.shape(Order.ROUND, 1, 58, 19), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, more)).containsExactly(ProposalDistance.Way.WIDTHS);
        DraftTrial hearth = trial(Trials.shape(Order.ROUND, 1, 61, 24), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(ProposalDistance.unlike(plain, hearth))
                .containsExactly(ProposalDistance.Way.SIZE, ProposalDistance.Way.WIDTHS);
    }

    /** Each piece is as large as the other fabric's, so half of what is cut into is of each fabric. */
    @Test
    void fabrics_differ_where_more_than_two_fifths_are_of_others() {
        DraftTrial plain = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        DraftTrial half = trial(ONE, Scheme.Kind.FIELD, Trials.WHITE, Trials.GREY);
        assertThat(ProposalDistance.unlike(plain, half)).containsExactly(ProposalDistance.Way.FABRICS);
        DraftTrial turned = trial(ONE, Scheme.Kind.FIELD, Trials.BLACK, Trials.WHITE);
        assertThat(ProposalDistance.unlike(plain, turned)).isEmpty();
    }

    private static List<String> strengths(DraftTrial... trials) {
        List<Plan> plans = new ArrayList<>();
        for (DraftTrial trial : trials) {
            plans.add(ProposalSelection.plan(trial));
        }
        List<String> told = new ArrayList<>();
        for (int i = 0; i < trials.length; i++) {
            told.add(ProposalStrengths.of(i, List.of(trials), plans).english());
        }
        return told;
    }

    /** Bars of exactly their sizes, the hearth too: no cut. 1A is cut 8½ × 4 in, 1B and 1C 11¾ × 4, 1D 15 × 4. */
    private static DraftTrial ready(boolean joined) {
        List<Piece> pieces = new ArrayList<>(List.of(
                Trials.piece(2, Trials.WHITE, 64, 64),
                Trials.piece(3, Trials.BLACK, 32, 68),
                Trials.piece(4, Trials.BLACK, 32, 94),
                Trials.piece(5, Trials.BLACK, 32, 94)));
        if (joined) {
            pieces.add(Trials.piece(6, Trials.BLACK, 32, 64));
            pieces.add(Trials.piece(7, Trials.BLACK, 32, 62));
        } else {
            pieces.add(Trials.piece(6, Trials.BLACK, 32, 120));
        }
        LayoutCandidate shape = Trials.shape(Order.ROUND, 1, 60, 24);
        return Trials.fitted(
                Trials.draft(shape, Scheme.Kind.FIELD, Trials.WHITE, slot -> List.of(Trials.BLACK)),
                new Supply(new Stash(pieces)));
    }

    @Test
    void what_one_alone_has_is_said_first_and_two_things_at_most() {
        DraftTrial large = trial(Trials.shape(Order.ROUND, 1, 120, 24), Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        List<String> told = strengths(ready(false), large);

        assertThat(told.get(0)).startsWith("The hearth sits alone in one fabric; the only one without a cut, ");
        assertThat(told.get(1))
                .startsWith("The hearth sits alone in one fabric; the largest of these, ")
                .endsWith(".");
        assertThat(told).allMatch(sentence -> sentence.split("; ", -1)[1].split(", ", -1).length <= 3);
    }

    @Test
    void joins_are_told_by_number_and_the_only_one_without_is_said_so() {
        List<String> told = strengths(ready(false), ready(true));
        assertThat(told.get(0)).contains("the only one without a join");
        assertThat(told.get(1)).doesNotContain("join").contains("uses up most pieces, 6");
    }

    @Test
    void alone_it_is_compared_with_none() {
        assertThat(strengths(ready(true))).containsExactly("The hearth sits alone in one fabric; one join.");
        assertThat(strengths(ready(false)))
                .containsExactly("The hearth sits alone in one fabric; no bar needs a join.");
        assertThat(strengths(ready(true), ready(true)))
                .containsOnly("The hearth sits alone in one fabric; one join, as few as any.");
    }
}
