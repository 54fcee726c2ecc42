package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Why a wish cannot be met: {@link Shortfall}. */
class ShortfallTest {

    private static Wish wish(Wish.Shape shape, Making making) {
        return new Wish(
                Wish.Target.none(),
                shape,
                making,
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
    }

    private static Wish.Shape finished(long hearth, long bar) {
        return new Wish.Shape(
                Optional.of(new Wish.Cut<>(Size.square(Length.inches(hearth, 8)), true)),
                List.of(new Wish.Cut<>(Length.inches(bar, 8), true)),
                Optional.empty(),
                Optional.empty());
    }

    private static Shortfall.Reasons reasons(
            Wish wish, Optional<Size> size, List<LayoutCandidate> shapes, Piece... pieces) {
        return new Shortfall(wish, new Stash(List.of(pieces))).reasons(size, shapes);
    }

    @Test
    void a_cloth_larger_than_all_the_fabric_is_proven_to_be_out_of_reach() {
        Shortfall.Reasons reasons = reasons(
                wish(finished(48, 24), Making.inches()),
                Optional.of(Size.square(Length.inches(36))),
                List.of(),
                Trials.piece(2, Trials.GREY, 144, 288));
        assertThat(reasons.proven()).isTrue();
        assertThat(reasons.why())
                .singleElement()
                .asString()
                .startsWith("The cloth alone is ")
                .endsWith(" is missing before any seam.");
    }

    /** A hearth of 6 in with bars of 3 comes to 12, 18, 24 … in. */
    @Test
    void a_shape_that_does_not_come_to_the_size_is_told_with_what_it_comes_to() {
        Shortfall.Reasons reasons = reasons(
                wish(finished(48, 24), Making.inches()),
                Optional.of(Size.square(Length.inches(13))),
                List.of(),
                Trials.piece(2, Trials.GREY, 480, 480));
        assertThat(reasons.proven()).isTrue();
        assertThat(reasons.why().get(0))
                .asString()
                .startsWith(
                        "This hearth with these bars comes to 12 × 12 in with one round, 18 × 18 in with 2 rounds,");
        Shortfall.Reasons open = reasons(
                wish(new Wish.Shape(Optional.empty(), List.of(), Optional.empty(), Optional.empty()), Making.inches()),
                Optional.of(Size.square(Length.inches(13))),
                List.of(),
                Trials.piece(2, Trials.GREY, 480, 480));
        assertThat(open.proven()).isFalse();
        assertThat(open.why().get(0)).asString().startsWith("No hearth and bars of this kind come to 13 × 13 in; ");
    }

    /** The hearth of 6 in is cut 6½. */
    @Test
    void a_hearth_that_no_piece_holds_is_told_with_the_best_there_is() {
        LayoutCandidate shape = Trials.shape(Order.ROUND, 1, 48, 24);
        Shortfall.Reasons reasons = reasons(
                wish(finished(48, 24), Making.inches()),
                Optional.empty(),
                List.of(shape),
                Trials.piece(2, Trials.GREY, 51, 480),
                Trials.piece(3, Trials.WHITE, 40, 480));
        assertThat(reasons.proven()).isTrue();
        assertThat(reasons.why())
                .map(Sentence::english)
                .containsExactly(
                        "No single piece holds the hearth, cut 6½ × 6½ in; the best is Grey, 6⅜ × 60 in (line 2).");
        assertThat(reasons(
                                wish(finished(48, 24), Making.inches()),
                                Optional.empty(),
                                List.of(shape),
                                Trials.piece(2, Trials.GREY, 52, 52))
                        .why())
                .isEmpty();
    }

    /** A bar of 3 in that finishes the cloth takes ½ in of seam and ½ in of hem: it is cut 4 in. Without a hem, 3½. */
    @Test
    void a_bar_that_no_piece_is_wide_enough_for_is_told_as_it_is_cut() {
        LayoutCandidate shape = Trials.shape(Order.ROUND, 1, 16, 24);
        Shortfall.Reasons reasons = reasons(
                wish(finished(16, 24), Making.inches()),
                Optional.empty(),
                List.of(shape),
                Trials.piece(2, Trials.GREY, 31, 480));
        assertThat(reasons.proven()).isTrue();
        assertThat(reasons.why())
                .map(Sentence::english)
                .containsExactly(
                        "No piece is wide enough for a bar cut 4 in; the widest is Grey, 3⅞ × 60 in (line 2).");

        Making bare = Making.inches().withHem(Hem.square(Length.ZERO, Length.ZERO));
        Shortfall.Reasons without = reasons(
                wish(finished(16, 24), bare), Optional.empty(), List.of(shape), Trials.piece(2, Trials.GREY, 28, 480));
        assertThat(without.proven()).isFalse();
        assertThat(without.why()).isEmpty();
    }
}
