package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Plans of colour that are worth trying, what is wished to the outside, and what is said where nothing can be made. */
class SchemesTest {

    private static final Layout LAYOUT = Trials.shape(Order.ROUND, 2, 48, 24).layout();
    private static final Fabric RED = Trials.fabric("Red", 0xcc2222);

    private static List<Scheme> schemes(Supply supply, Fabric... named) {
        return new Schemes(supply, List.of(named), Contrast.READS).forLayout(LAYOUT);
    }

    private static Set<Scheme.Kind> kinds(List<Scheme> schemes) {
        return schemes.stream().map(Scheme::kind).collect(Collectors.toSet());
    }

    /** The cloth with the first fabric of each list, or the last. */
    private static Cloth sewn(Scheme scheme, boolean first) {
        List<List<Layout.Part>> parts = new ArrayList<>();
        for (int i = 0; i < LAYOUT.slots().size(); i++) {
            List<Fabric> bar = scheme.bars().get(i);
            String fabric = bar.get(first ? 0 : bar.size() - 1).name();
            parts.add(List.of(
                    new Layout.Part(fabric, Showing.SAME, LAYOUT.slots().get(i).length())));
        }
        return new Cloth(LAYOUT.sewn(scheme.hearth().get(0).name(), Showing.SAME, parts), Making.inches());
    }

    @Test
    void every_scheme_keeps_what_its_name_promises_whichever_of_its_fabrics_a_bar_is_of() {
        for (Supply supply : List.of(
                Trials.plenty(Trials.WHITE, Trials.GREY, Trials.BLACK, RED),
                Trials.plenty(Trials.WHITE, Trials.GREY, Trials.NEAR, Trials.BLACK, RED),
                Trials.plenty(Trials.WHITE, Trials.BLACK))) {
            List<Scheme> schemes = schemes(supply);
            assertThat(schemes).doesNotHaveDuplicates();
            for (Scheme scheme : schemes) {
                if (scheme.kind() == Scheme.Kind.ALL) {
                    continue;
                }
                for (boolean first : new boolean[] {true, false}) {
                    assertThat(SchemeRule.holds(scheme.kind(), sewn(scheme, first), supply.fabrics()))
                            .as("%s", scheme)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void with_fabrics_enough_every_kind_is_there_and_with_two_those_that_two_can_make() {
        assertThat(kinds(schemes(Trials.plenty(Trials.WHITE, Trials.GREY, Trials.BLACK, RED))))
                .containsExactlyInAnyOrder(
                        Scheme.Kind.FIELD,
                        Scheme.Kind.HALVES,
                        Scheme.Kind.TURNS,
                        Scheme.Kind.SPIRAL,
                        Scheme.Kind.ROUNDS,
                        Scheme.Kind.GRADED,
                        Scheme.Kind.FRAMES,
                        Scheme.Kind.ALL);
        assertThat(kinds(schemes(Trials.plenty(Trials.WHITE, Trials.BLACK))))
                .containsExactlyInAnyOrder(
                        Scheme.Kind.FIELD, Scheme.Kind.HALVES, Scheme.Kind.TURNS, Scheme.Kind.FRAMES, Scheme.Kind.ALL);
        assertThat(kinds(schemes(Trials.plenty(Trials.GREY)))).containsExactly(Scheme.Kind.FIELD);
        // two greys five points apart are neither light nor dark
        assertThat(kinds(schemes(Trials.plenty(Trials.GREY, Trials.NEAR))))
                .containsExactlyInAnyOrder(Scheme.Kind.FIELD, Scheme.Kind.ALL);
    }

    @Test
    void named_fabrics_are_kept_in_their_order_with_the_first_for_the_hearth() {
        List<Scheme> schemes =
                schemes(Trials.plenty(Trials.WHITE, Trials.GREY, Trials.BLACK, RED), RED, Trials.GREY, Trials.WHITE);
        assertThat(schemes).allMatch(scheme -> scheme.hearth().equals(List.of(RED)));
        assertThat(schemes)
                .allMatch(scheme -> scheme.bars().stream()
                        .flatMap(List::stream)
                        .allMatch(fabric -> fabric.equals(Trials.GREY) || fabric.equals(Trials.WHITE)));
        Scheme rounds = schemes.stream()
                .filter(scheme -> scheme.kind() == Scheme.Kind.ROUNDS)
                .findFirst()
                .orElseThrow();
        assertThat(rounds.bars().get(0)).containsExactly(Trials.GREY);
        assertThat(rounds.bars().get(4)).containsExactly(Trials.WHITE);
    }

    /** The outer round takes most, so the fabric of which there is most lies there. */
    @Test
    void without_names_the_outer_rounds_are_of_what_there_is_most_of() {
        List<Piece> pieces = List.of(
                Trials.piece(2, Trials.WHITE, 80, 80),
                Trials.piece(3, Trials.GREY, 300, 300),
                Trials.piece(4, Trials.BLACK, 200, 300));
        for (Scheme scheme : schemes(new Supply(new Stash(pieces)))) {
            if (scheme.kind() == Scheme.Kind.ROUNDS && scheme.hearth().equals(List.of(Trials.WHITE))) {
                assertThat(scheme.bars().get(7)).containsExactly(Trials.GREY);
                assertThat(scheme.bars().get(0)).containsExactly(Trials.BLACK);
            }
        }
        assertThat(schemes(new Supply(new Stash(pieces))))
                .extracting(Scheme::hearth)
                .contains(List.of(Trials.WHITE));
        // a fabric without a piece that holds the hearth is none for it
        List<Piece> narrow = List.of(Trials.piece(2, Trials.WHITE, 40, 400), Trials.piece(3, Trials.GREY, 300, 300));
        assertThat(schemes(new Supply(new Stash(narrow))))
                .filteredOn(scheme -> scheme.kind() != Scheme.Kind.ALL)
                .allMatch(scheme -> scheme.hearth().equals(List.of(Trials.GREY)));
    }

    private static final Gift BOX = Gift.parse("box 8 x 6 x 3 in", null);

    private static VisibleFabricSchemes outside(Supply supply) {
        return new VisibleFabricSchemes(
                ColourGoal.of(new Wish.Looks(
                        Optional.of(new Wish.Outside("Black", BOX, Tie.FOUR_CORNER, Tail.INCHES, Placing.CENTRED)),
                        Optional.empty(),
                        Contrast.READS)),
                Trials.BLACK,
                supply);
    }

    private static Cloth plain(LayoutCandidate shape, Fabric hearth, Fabric bars) {
        return Trials.draft(shape, Scheme.Kind.ALL, hearth, slot -> List.of(bars))
                .design()
                .whole();
    }

    @Test
    void what_shows_of_a_fabric_is_all_of_it_none_of_it_or_what_the_hearth_leaves() {
        VisibleFabricSchemes schemes = outside(Trials.plenty(Trials.WHITE, Trials.BLACK));
        LayoutCandidate shape = Trials.shape(Order.ROUND, 2, 80, 40);
        assertThat(schemes.score(plain(shape, Trials.BLACK, Trials.BLACK))).isEqualTo(1);
        assertThat(schemes.score(plain(shape, Trials.WHITE, Trials.WHITE))).isZero();
        // the least of the one and the most of the other, with the spare corners the same way
        double bars = schemes.score(plain(shape, Trials.WHITE, Trials.BLACK));
        double hearth =
                schemes.between(plain(shape, Trials.BLACK, Trials.WHITE)).most();
        assertThat(bars + hearth).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(schemes.score(plain(shape, Trials.BLACK, Trials.WHITE))).isLessThanOrEqualTo(hearth);
        assertThat(schemes.sentence(plain(shape, Trials.BLACK, Trials.BLACK)).english())
                .isEqualTo("Black: 100 % of what shows once tied.");
        // a cloth too small for the box shows nothing
        assertThat(schemes.score(plain(Trials.shape(Order.ROUND, 1, 48, 24), Trials.BLACK, Trials.BLACK)))
                .isZero();
    }

    @Test
    void a_draft_is_changed_so_that_more_of_the_fabric_shows_as_far_as_there_is_fabric() {
        LayoutCandidate shape = Trials.shape(Order.ROUND, 2, 80, 40);
        Draft draft = Trials.draft(shape, Scheme.Kind.ALL, Trials.BLACK, slot -> List.of(Trials.WHITE, Trials.BLACK));
        List<Piece> pieces = List.of(Trials.piece(2, Trials.WHITE, 480, 480), Trials.piece(3, Trials.BLACK, 100, 200));
        VisibleFabricSchemes schemes = outside(new Supply(new Stash(pieces)));

        List<Draft> brought = schemes.brought(draft);

        assertThat(brought).isNotEmpty().hasSizeLessThanOrEqualTo(2);
        for (Draft other : brought) {
            assertThat(other.scheme().kind()).isEqualTo(Scheme.Kind.OUTWARDS);
            assertThat(other.design().layout()).isEqualTo(shape.layout());
            assertThat(other.scheme().bars()).allMatch(bar -> bar.size() == 1);
            double area = 0;
            for (int i = 0; i < other.scheme().bars().size(); i++) {
                boolean black = other.scheme().bars().get(i).equals(List.of(Trials.BLACK));
                area += black ? shape.layout().slots().get(i).size().areaMm2() : 0;
            }
            assertThat(area)
                    .isPositive()
                    .isLessThanOrEqualTo(0.8 * pieces.get(1).areaMm2());
            double score = schemes.score(other.design().whole());
            assertThat(score).isGreaterThan(schemes.score(plain(shape, Trials.BLACK, Trials.WHITE)));
        }
        assertThat(schemes.brought(Trials.draft(
                        Trials.shape(Order.ROUND, 1, 48, 24),
                        Scheme.Kind.ALL,
                        Trials.WHITE,
                        slot -> List.of(Trials.WHITE))))
                .isEmpty();
    }
}
