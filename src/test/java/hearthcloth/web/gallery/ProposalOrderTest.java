package hearthcloth.web.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.web.gift.Leanings;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.Language;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Promises;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How proposals stand beside each other: their order, their names, what was left out, and what was wished. */
class ProposalOrderTest {

    private static final Voice VOICE = Voice.english(Ruler.EIGHTHS);
    private static final ChoosingWords WORDS = ChoosingWords.in(Language.ENGLISH);

    private static final Stash STASH = Stashes.scraps(40, 3);
    private static final List<Plan> PLANS = Planned.plans(STASH, 18, 5);

    private static final List<Scheme.Kind> KINDS =
            List.of(Scheme.Kind.HALVES, Scheme.Kind.FIELD, Scheme.Kind.FRAMES, Scheme.Kind.SCATTERED);

    private static Map<String, Plan> numbered(List<Plan> plans) {
        Map<String, Plan> numbered = new LinkedHashMap<>();
        plans.forEach(plan -> numbered.put(String.valueOf(numbered.size()), plan));
        return numbered;
    }

    @Test
    void where_nothing_is_wished_all_stand_as_they_were_found() {
        ProposalOrder open = new ProposalOrder(Optional.empty(), Set.of(), false);
        assertThat(open.isOpen()).isTrue();
        assertThat(open.sorted(List.of(), PLANS)).isEqualTo(PLANS);
        assertThat(open.sorted(List.of(PLANS.get(1)), PLANS))
                .as("what she wants used first alone comes once")
                .startsWith(PLANS.get(1))
                .containsExactlyInAnyOrderElementsOf(PLANS);
    }

    @Test
    void those_with_the_colours_she_likes_come_first() {
        for (Scheme.Kind kind : KINDS) {
            ProposalOrder order = new ProposalOrder(Optional.of(kind), Set.of(), false);
            List<Boolean> liked = order.sorted(List.of(), PLANS).stream()
                    .map(plan -> !SchemeRule.holds(kind, plan.cloth(), plan.fabrics()))
                    .toList();
            assertThat(liked).as(kind.title()).isSorted();
        }
    }

    @Test
    void those_that_use_most_of_what_she_wants_used_come_first_and_then_the_fewest_seams() {
        Set<String> first = new HashSet<>();
        STASH.pieces().subList(0, 20).forEach(piece -> first.add(piece.id()));
        ProposalOrder order = new ProposalOrder(Optional.empty(), first, true);
        List<Plan> sorted = order.sorted(List.of(), PLANS);
        for (int i = 1; i < sorted.size(); i++) {
            Plan before = sorted.get(i - 1);
            Plan after = sorted.get(i);
            assertThat(order.usedFirst(before)).isGreaterThanOrEqualTo(order.usedFirst(after));
            if (order.usedFirst(before) == order.usedFirst(after)) {
                assertThat(ProposalOrder.seams(before)).isLessThanOrEqualTo(ProposalOrder.seams(after));
            }
        }
    }

    /** The same plan eight times: whatever is added to a name, no two are alike, nor like one she has. */
    @Test
    void no_two_names_are_alike() {
        List<Plan> alike = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            alike.add(PLANS.get(0));
        }
        alike.addAll(PLANS);
        Set<String> taken = Set.copyOf(ProposalNames.of(numbered(PLANS), Set.of(), VOICE));
        List<String> names = ProposalNames.of(numbered(alike), taken, VOICE);
        assertThat(names).hasSize(alike.size()).doesNotHaveDuplicates().doesNotContainAnyElementsOf(taken);
    }

    @Test
    void what_is_left_out_is_said_with_whose_it_is() {
        List<Piece> pieces = STASH.pieces();
        Promises promises = new Promises(List.of(
                new Promises.Counting("a", "Dawn", pieces.subList(0, 3)),
                new Promises.Counting("b", "Dusk", pieces.subList(3, 4))));
        StashAtHand heap = new StashAtHand(STASH, Set.of(pieces.get(9).id()), promises);
        HeldBack held = HeldBack.of(heap, Set.of(), WORDS);
        assertThat(held.sentence())
                .isEqualTo("Left out: 3 pieces that Dawn counts on; 1 piece that Dusk counts on; 1 piece you have set"
                        + " aside.");
        HeldBack shared = HeldBack.of(heap, Set.of("a"), WORDS);
        assertThat(shared.sentence()).doesNotContain("Dawn").contains("Dusk");
        assertThat(shared.cloths()).extracting(HeldBack.Cloth::shared).containsExactly(true, false);
        StashAtHand free = new StashAtHand(STASH, Set.of(), new Promises(List.of()));
        assertThat(HeldBack.of(free, Set.of(), WORDS).sentence()).isEmpty();
    }

    @Test
    void each_wish_is_a_chip_that_says_where_it_is_not_met() {
        Leanings lean = new Leanings("Velvet", List.of("Oat"), new Leanings.Colours("", ""), "wide", true);
        WishChips.Asked asked = new WishChips.Asked(
                lean,
                WishForm.OPEN,
                new Stash(List.of()),
                STASH,
                Voice.english(Ruler.EIGHTHS),
                false,
                Optional.of("a box"));
        WishChips chips = WishChips.of(asked, lean.from(STASH), new Swatches(STASH.fabrics(), Map.of()), PLANS);
        assertThat(chips.chips())
                .extracting(WishChips.Chip::what)
                .containsExactly("hearth", "without", "bars", "quick");
        assertThat(chips.chips().get(0).note()).isEqualTo("no piece large enough");
        assertThat(chips.chips().get(2).words()).isEqualTo("wide, cut 5 in");
        assertThat(chips.fabrics())
                .extracting(WishChips.Cloth::name)
                .doesNotContain("Oat")
                .contains("Rust");
        assertThat(chips.waiting()).contains("a box");
    }
}
