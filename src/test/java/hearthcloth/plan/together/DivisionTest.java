package hearthcloth.plan.together;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Place;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.plan.propose.ShortSearch;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link Division} and the {@link OneCloth} that it plans again and again. */
class DivisionTest {

    private static final List<Asked> ASKED =
            List.of(Wished.square("Ada", 12), Wished.square("Bea", 13), Wished.square("Cleo", 12));

    private static Division division(long seed) {
        return new Division(ASKED, 50, new SplittableRandom(seed), Budget.steps(Long.MAX_VALUE));
    }

    private static OneCloth.Work work(long seed) {
        return new OneCloth.Work(seed, 1_000, Budget.steps(Long.MAX_VALUE));
    }

    private static String hearth(Plan plan) {
        return plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(patch -> patch.fabric())
                .findFirst()
                .orElseThrow();
    }

    /** Twelve pieces each of four fabrics, any of which may be a hearth. */
    private static Stash alike() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 48; i++) {
            Fabric fabric = Stashes.fabric(i % 4, Fabric.Faces.SAME, Fabric.Nap.ANY);
            pieces.add(Stashes.piece(i + 2, fabric, new Size(Length.inches(8), Length.inches(20))));
        }
        return new Stash(pieces);
    }

    @ParameterizedTest
    @EnumSource(Division.Offer.class)
    void whoever_gets_a_cloth_gets_the_size_asked_and_the_others_keep_theirs(Division.Offer offer) {
        Allotment kept = division(1)
                .planned(
                        Allotment.of(alike(), OffcutRule.SHARED),
                        List.of(1),
                        Division.Offer.ALL,
                        ShortSearch.Depth.PLAIN);
        Allotment all = division(2).planned(kept, List.of(2, 0), offer, ShortSearch.Depth.PLAIN);
        assertThat(all.made()).containsOnlyKeys(0, 1, 2);
        assertThat(all.made(1)).isEqualTo(kept.made(1));
        all.made().forEach((cloth, made) -> {
            PlanCheck.require(made.plan());
            assertThat(made.plan().cloth().finished())
                    .isEqualTo(ASKED.get(cloth).wish().target().size().orElseThrow());
        });
    }

    @ParameterizedTest
    @EnumSource(Division.Offer.class)
    void the_same_chance_divides_alike(Division.Offer offer) {
        Stash heap = Stashes.scraps(30, 4);
        Allotment once = division(3)
                .planned(Allotment.of(heap, OffcutRule.SHARED), List.of(0, 1, 2), offer, ShortSearch.Depth.PLAIN);
        Allotment again = division(3)
                .planned(Allotment.of(heap, OffcutRule.SHARED), List.of(0, 1, 2), offer, ShortSearch.Depth.PLAIN);
        assertThat(again.made()).isEqualTo(once.made());
    }

    @Test
    void from_nothing_nobody_gets_a_cloth() {
        Allotment none = Allotment.of(new Stash(List.of()), OffcutRule.SHARED);
        for (Division.Offer offer : Division.Offer.values()) {
            assertThat(division(1)
                            .planned(none, List.of(0, 1, 2), offer, ShortSearch.Depth.PLAIN)
                            .made())
                    .isEmpty();
        }
    }

    /** Three of the four fabrics are hearths already, so the fourth is the next one. */
    @Test
    void a_fabric_that_is_no_hearth_yet_is_tried_first() {
        for (int rare = 0; rare < 4; rare++) {
            Map<String, Integer> seen = new java.util.LinkedHashMap<>();
            for (int i = 0; i < 4; i++) {
                seen.put(Stashes.fabric(i, Fabric.Faces.SAME, Fabric.Nap.ANY).name(), i == rare ? 1 : 2);
            }
            Optional<Made> made = new OneCloth(ASKED).plan(0, alike().pieces(), ShortSearch.Depth.SHORT, seen, work(1));
            String expected =
                    Stashes.fabric(rare, Fabric.Faces.SAME, Fabric.Nap.ANY).name();
            assertThat(made.orElseThrow().hearth()).isEqualTo(expected);
            assertThat(hearth(made.orElseThrow().plan())).isEqualTo(expected);
        }
    }

    @Test
    void her_own_choice_of_fabrics_stands_whoever_else_has_them() {
        Asked rust = new Asked(
                "Rust",
                Wished.wish(Optional.of(Size.square(Length.inches(12))), List.of("Rust", "Oat")),
                Optional.empty());
        Made made = new OneCloth(List.of(rust))
                .plan(0, alike().pieces(), ShortSearch.Depth.SHORT, Map.of("Rust", 9), work(1))
                .orElseThrow();
        assertThat(made.hearth()).isEqualTo("Rust");
        assertThat(made.shares().keySet()).isSubsetOf("Rust", "Oat");
    }
}
