package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a draft is thought to take before it is searched, what helps it afterwards, and how long is searched. */
class DraftScoreTest {

    /** Hearth of 7½ in cut 8, bars of 3 in: about 3¾ wide as cut, and 8½, 11½, 11½ and 14½ in long. */
    private static final LayoutCandidate SHAPE = Trials.shape(Order.ROUND, 1, 60, 24);

    private static final Draft DRAFT =
            Trials.draft(SHAPE, Scheme.Kind.FIELD, Trials.WHITE, slot -> List.of(Trials.BLACK));

    private static Optional<DraftScore.Judged> judged(Piece... pieces) {
        return new DraftScore(new Supply(new Stash(List.of(pieces))), Making.inches()).judged(DRAFT);
    }

    private static final Piece HEARTH = Trials.piece(2, Trials.WHITE, 128, 128);

    /** Bars take 30 · (68 + 92 + 92 + 116) = 11040 square eighths, the hearth 64 · 64 = 4096 of 128 · 128, a quarter. */
    @Test
    void how_near_fabrics_are_to_being_used_up_counts_ten_times_the_fourth_power_of_the_share() {
        double bars = 11_040 / (480.0 * 480);
        DraftScore.Judged judged =
                judged(HEARTH, Trials.piece(3, Trials.BLACK, 480, 480)).orElseThrow();

        assertThat(judged.joins()).isZero();
        assertThat(judged.tightness()).isCloseTo(10 * (Math.pow(0.25, 4) + Math.pow(bars, 4)), within(1e-9));
        DraftScore score = new DraftScore(Trials.plenty(Trials.WHITE), Making.inches());
        assertThat(score.areaMm2(SHAPE)).isCloseTo((11_040 + 4_096) * 3.175 * 3.175, within(1e-3));
    }

    /** A strip of 5 in gains 4¼ beyond its first ¾: 7¾, 10¾, 10¾ and 13¾ in take 2, 3, 3 and 4 parts. */
    @Test
    void joins_are_guessed_from_the_longest_strip_there_is() {
        List<Piece> pieces = new ArrayList<>(List.of(HEARTH));
        for (int i = 0; i < 40; i++) {
            pieces.add(Trials.piece(3 + i, Trials.BLACK, 30, 40));
        }
        assertThat(judged(pieces.toArray(Piece[]::new)).orElseThrow().joins()).isEqualTo(1 + 2 + 2 + 3);
    }

    @Test
    void a_draft_that_cannot_be_made_has_no_estimate() {
        Piece bars = Trials.piece(3, Trials.BLACK, 480, 480);
        assertThat(judged(Trials.piece(2, Trials.WHITE, 63, 480), bars)).isEmpty();
        assertThat(judged(Trials.piece(2, Trials.WHITE, 64, 64), bars)).isPresent();
        assertThat(judged(HEARTH, Trials.piece(3, Trials.BLACK, 29, 29))).isEmpty();
        // wide enough, but less than the 11040 that the bars take
        assertThat(judged(HEARTH, Trials.piece(3, Trials.BLACK, 30, 367))).isEmpty();
        assertThat(judged(HEARTH, Trials.piece(3, Trials.BLACK, 30, 368))).isPresent();
    }

    @Test
    void fabric_that_a_remedy_says_is_enough_is_enough() {
        Supply short_ = new Supply(new Stash(List.of(HEARTH, Trials.piece(3, Trials.BLACK, 34, 200))));
        assertThat(Fitting.fit(DRAFT, short_, 200, 1, Budget.steps(200))).isEmpty();

        List<String> remedy = Remedy.of(DRAFT, short_, 200, Budget.steps(10_000)).stream()
                .map(Sentence::english)
                .toList();

        assertThat(remedy.get(0)).startsWith("Black is ").contains(" short at 4 in wide, for 1");
        String last = remedy.get(remedy.size() - 1);
        assertThat(last).startsWith("It would work with this added: Black, ");
        List<Piece> pieces = new ArrayList<>(short_.of(List.of(Trials.WHITE, Trials.BLACK)));
        Matcher added =
                Pattern.compile("(?:(\\d) of )?Black, (\\S+) × (\\S+) in").matcher(last);
        while (added.find()) {
            var size = hearthcloth.measure.Measures.size(added.group(2) + " x " + added.group(3) + " in", null);
            for (int i = added.group(1) == null ? 1 : Integer.parseInt(added.group(1)); i > 0; i--) {
                pieces.add(Stashes.piece(10 + pieces.size(), Trials.BLACK, size));
            }
        }
        assertThat(pieces).hasSizeGreaterThan(2);
        assertThat(Fitting.fit(DRAFT, new Supply(new Stash(pieces)), 2_000, 1, Budget.steps(2_000)))
                .isPresent();
    }

    @Test
    void a_draft_that_only_lacks_time_is_told_so() {
        assertThat(Remedy.of(DRAFT, Trials.plenty(Trials.WHITE, Trials.BLACK), 200, Budget.steps(1_000)))
                .map(Sentence::english)
                .containsExactly("A plan needs more time; plan again with a longer time limit.");
    }

    private static List<DraftTrial> seen(DraftTrial trial, Supply supply) {
        return new HearthSeen(supply, List.of(), ColourGoal.flat(hearthcloth.plan.model.Contrast.READS), 200, 1)
                .of(trial, Budget.steps(5_000));
    }

    /** Grey 0x777777 and 0x6a6a6a are five points of L* apart: no hearth stands out between them. */
    @Test
    void a_quiet_hearth_is_tried_again_where_a_fabric_makes_it_stand_out() {
        Draft quiet = Trials.draft(SHAPE, Scheme.Kind.FIELD, Trials.GREY, slot -> List.of(Trials.NEAR));
        Supply both = Trials.plenty(Trials.GREY, Trials.NEAR);
        DraftTrial trial = Trials.fitted(quiet, both);

        assertThat(seen(trial, both)).isEmpty();
        List<DraftTrial> found = seen(trial, Trials.plenty(Trials.GREY, Trials.NEAR, Trials.WHITE));
        assertThat(found).isNotEmpty();
        for (DraftTrial one : found) {
            assertThat(TrialColours.figures(one).hearth().standsOut()).isEqualTo(1);
            assertThat(one.cloth().finished()).isEqualTo(trial.cloth().finished());
        }
    }

    @Test
    void a_hearth_that_stands_out_already_is_left_and_a_named_one_stays() {
        DraftTrial loud = Trials.trial(SHAPE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        assertThat(seen(loud, Trials.plenty(Trials.GREY, Trials.WHITE, Trials.BLACK)))
                .isEmpty();

        Draft quiet = Trials.draft(SHAPE, Scheme.Kind.FIELD, Trials.GREY, slot -> List.of(Trials.NEAR));
        Supply three = Trials.plenty(Trials.GREY, Trials.NEAR, Trials.WHITE);
        List<DraftTrial> named = new HearthSeen(
                        three,
                        List.of(Trials.GREY, Trials.NEAR, Trials.WHITE),
                        ColourGoal.flat(hearthcloth.plan.model.Contrast.READS),
                        200,
                        1)
                .of(Trials.fitted(quiet, three), Budget.steps(5_000));
        assertThat(named)
                .isNotEmpty()
                .allMatch(one -> one.draft().scheme().hearth().equals(List.of(Trials.GREY)));
        assertThat(new HearthSeen(
                                three,
                                List.of(Trials.GREY, Trials.NEAR),
                                ColourGoal.flat(hearthcloth.plan.model.Contrast.READS),
                                200,
                                1)
                        .of(Trials.fitted(quiet, three), Budget.steps(5_000)))
                .isEmpty();
    }

    @Test
    void until_a_cloth_is_found_no_budget_ends_the_search() {
        List<PlanProgress> told = new ArrayList<>();
        SearchWork work = new SearchWork(3, Budget.steps(0), told::add);
        assertThat(work.laterSteps()).isEqualTo(450);
        assertThat(new SearchWork(0, Budget.steps(0), told::add).laterSteps()).isEqualTo(150);
        assertThat(work.isOver(false)).isFalse();
        assertThat(work.isOver(true)).isTrue();
        assertThat(work.once(false).spent()).isFalse();

        DraftTrial trial = Trials.trial(SHAPE, Scheme.Kind.FIELD, Trials.WHITE, Trials.BLACK);
        PlanProgress progress = new PlanProgress(1, 9, 1, Optional.of(ProposalSelection.plan(trial)));
        work.withoutPlans().seen().accept(progress);
        assertThat(told).containsExactly(new PlanProgress(1, 9, 1, Optional.empty()));
        assertThat(work.withoutPlans().isOver(true)).isTrue();
        assertThat(work.withoutPlans().effort()).isEqualTo(3);
    }
}
