package hearthcloth.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a draft is tried against and held to: {@link Supply}, {@link Idea}, {@link LayoutCandidate}; and {@link DraftTrial}s in order. */
class SupplyTest {

    private static final Fabric OAT = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = Stashes.fabric(1, Fabric.Faces.SAME, Fabric.Nap.LENGTHWISE);
    private static final Fabric NONE = Stashes.fabric(2, Fabric.Faces.SAME, Fabric.Nap.ANY);

    private static final Piece LONG = Stashes.piece(2, OAT, inches(4, 30));
    private static final Piece WIDE = Stashes.piece(3, OAT, inches(20, 9));
    private static final Piece NAPPED = Stashes.piece(4, KELP, inches(10, 25));

    private static final Supply SUPPLY = new Supply(new Stash(List.of(LONG, NAPPED, WIDE)));

    private static Size inches(long width, long height) {
        return new Size(Length.inches(width), Length.inches(height));
    }

    @Test
    void pieces_are_those_of_a_fabric_in_the_order_of_the_stash() {
        assertThat(SUPPLY.fabrics()).containsExactly(OAT, KELP);
        assertThat(SUPPLY.of(OAT)).containsExactly(LONG, WIDE);
        assertThat(SUPPLY.of(NONE)).isEmpty();
        assertThat(SUPPLY.of(List.of(KELP, OAT))).containsExactly(NAPPED, LONG, WIDE);
    }

    /** 4 × 30 + 20 × 9 = 300 square inches of 645.16 mm². */
    @Test
    void areas_add_up() {
        assertThat(SUPPLY.area(OAT)).isEqualTo(300 * 645.16, within(1e-6));
        assertThat(SUPPLY.area(NONE)).isZero();
        assertThat(SUPPLY.area(List.of(OAT, KELP))).isEqualTo(550 * 645.16, within(1e-6));
    }

    @Test
    void a_rectangle_is_held_turned_only_where_there_is_no_nap() {
        assertThat(SUPPLY.holds(OAT, inches(30, 4))).isTrue();
        assertThat(SUPPLY.holds(OAT, inches(20, 9))).isTrue();
        assertThat(SUPPLY.holds(OAT, inches(10, 10))).isFalse();
        assertThat(SUPPLY.holds(KELP, inches(10, 25))).isTrue();
        assertThat(SUPPLY.holds(KELP, inches(25, 10))).isFalse();
        assertThat(SUPPLY.holds(NONE, inches(1, 1))).isFalse();
    }

    @Test
    void the_longest_strip_lies_either_way_in_a_piece_that_is_wide_enough() {
        assertThat(SUPPLY.longest(List.of(OAT), Length.inches(4))).isEqualTo(Length.inches(30));
        assertThat(SUPPLY.longest(List.of(OAT), Length.inches(9))).isEqualTo(Length.inches(20));
        assertThat(SUPPLY.longest(List.of(OAT), Length.inches(20))).isEqualTo(Length.inches(9));
        assertThat(SUPPLY.longest(List.of(OAT, KELP), Length.inches(9))).isEqualTo(Length.inches(25));
        assertThat(SUPPLY.longest(List.of(OAT, NONE), Length.inches(31))).isEqualTo(Length.ZERO);
    }

    @Test
    void a_hearth_lies_well_between_a_fifth_and_a_half_of_each_side() {
        Size whole = inches(20, 30);
        assertThat(LayoutCandidate.isWell(inches(4, 6), whole)).isTrue();
        assertThat(LayoutCandidate.isWell(inches(10, 15), whole)).isTrue();
        assertThat(LayoutCandidate.isWell(inches(3, 6), whole)).isFalse();
        assertThat(LayoutCandidate.isWell(inches(4, 5), whole)).isFalse();
        assertThat(LayoutCandidate.isWell(inches(11, 15), whole)).isFalse();
        assertThat(LayoutCandidate.isWell(inches(10, 16), whole)).isFalse();
        assertThat(LayoutCandidate.isFifth(inches(15, 29), whole)).isTrue();
        assertThat(LayoutCandidate.isFifth(inches(3, 29), whole)).isFalse();
        assertThat(LayoutCandidate.isFifth(inches(19, 5), whole)).isFalse();
    }

    @Test
    void no_idea_allows_everything_and_one_only_what_it_names() {
        LayoutCandidate candidate = candidate(Order.ROUND);
        assertThat(Idea.none().layouts().test(candidate)).isTrue();
        assertThat(Scheme.Kind.values()).allMatch(Idea.none()::allows);

        Idea halves = new Idea(layout -> false, List.of(), Set.of(Scheme.Kind.HALVES), Optional.empty());
        assertThat(halves.allows(Scheme.Kind.HALVES)).isTrue();
        assertThat(halves.allows(Scheme.Kind.ALL)).isFalse();
        assertThat(halves.layouts().test(candidate)).isFalse();
    }

    private static LayoutCandidate candidate(Order order) {
        return new LayoutCandidate(order, 1, design(order).layout(), List.of());
    }

    /** A hearth of 8 in as cut, and bars of 4 in on all its sides or on two. */
    private static Design design(Order order) {
        Making making = Making.inches();
        List<Layout.Course> cut = Layout.courses(order, 1, List.of(Length.inches(4)));
        Layout layout = new Layout(
                Layout.hearthOfCut(Size.square(Length.inches(8)), cut, making), Layout.finishedOfCut(cut, making));
        List<List<Fabric>> bars = new ArrayList<>();
        layout.slots().forEach(slot -> bars.add(List.of(OAT)));
        return new Design(
                order, layout, new Scheme(Scheme.Kind.ALL, List.of(OAT), bars), making, PiecingRules.inches());
    }

    private static Optional<DraftTrial> fitted(Order order, Piece... pieces) {
        Draft draft = new Draft(candidate(order), design(order));
        Supply supply = new Supply(new Stash(List.of(pieces)));
        return Fitting.fit(draft, supply, 400, 1, Budget.steps(400));
    }

    private static Piece piece(int row, long width, long height) {
        return Stashes.piece(row, OAT, inches(width, height));
    }

    @Test
    void a_draft_that_fits_is_answered_with_what_it_cuts_and_what_no_plan_beats() {
        DraftTrial trial = fitted(Order.ROUND, piece(2, 40, 40)).orElseThrow();

        assertThat(trial.figures().joins()).isZero();
        assertThat(trial.bound().joins()).isZero();
        // what is touched is the one piece of 1600 square inches
        assertThat(trial.bound().touchedMm2()).isBetween(1.0, 1600 * 645.16 + 1);
        assertThat(trial.figures().touchedArea()).isEqualTo(320.0 * 320);
        assertThat(trial.answer().used()).containsExactly(piece(2, 40, 40));
        assertThat(trial.cloth().finished())
                .isEqualTo(design(Order.ROUND).layout().finished());
        assertThat(fitted(Order.ROUND, piece(2, 8, 8))).isEmpty();
    }

    /** The areas are those of the bound in marks times the square of an eighth of an inch, 10.080625 mm². */
    @Test
    void bounds_are_in_square_millimetres() {
        DraftTrial trial = fitted(Order.ROUND, piece(2, 40, 40)).orElseThrow();
        double used = trial.figures().usedArea() * 3.175 * 3.175;

        assertThat(trial.bound().touchedMm2()).isGreaterThanOrEqualTo(used * (1 - 1e-9));
        assertThat(trial.bound().lostMm2()).isBetween(0.0, used);
    }

    @Test
    void a_hearth_in_the_middle_goes_before_one_in_a_corner_and_fewer_joins_before_both() {
        DraftTrial middle = fitted(Order.ROUND, piece(2, 40, 40)).orElseThrow();
        DraftTrial corner = fitted(Order.TWO_SIDES, piece(2, 40, 40)).orElseThrow();
        // bars of 8½ to 15 in out of strips of 10 in need joins
        DraftTrial joined = fitted(
                        Order.ROUND,
                        piece(2, 8, 8),
                        piece(3, 4, 10),
                        piece(4, 4, 10),
                        piece(5, 4, 10),
                        piece(6, 4, 10),
                        piece(7, 4, 10),
                        piece(8, 4, 10),
                        piece(9, 4, 10),
                        piece(10, 4, 10))
                .orElseThrow();

        assertThat(middle.isOffCentre()).isFalse();
        assertThat(corner.isOffCentre()).isTrue();
        assertThat(joined.figures().joins()).isPositive();
        List<DraftTrial> sorted = new ArrayList<>(List.of(joined, corner, middle));
        sorted.sort(DraftTrial.BEST);
        assertThat(sorted).containsExactly(middle, corner, joined);
    }

    @Test
    void of_equals_the_one_with_fewer_cuts_then_the_one_that_cuts_into_less_goes_first() {
        DraftTrial large = fitted(Order.ROUND, piece(2, 60, 60)).orElseThrow();
        DraftTrial small = fitted(Order.ROUND, piece(2, 40, 40)).orElseThrow();

        if (large.figures().cuts() == small.figures().cuts()) {
            assertThat(DraftTrial.BEST.compare(small, large)).isNegative();
        } else {
            assertThat(DraftTrial.BEST.compare(small, large))
                    .isEqualTo(Integer.compare(
                            small.figures().cuts(), large.figures().cuts()));
        }
        assertThat(DraftTrial.BEST.compare(small, small.answered(small.answer())))
                .isZero();
        assertThat(small.recut().figures().joins()).isEqualTo(small.figures().joins());
    }
}
