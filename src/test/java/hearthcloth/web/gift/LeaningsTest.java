package hearthcloth.web.gift;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.sew.machine.SewingHand;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Capacity;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What she wishes, kept from page to page: {@link Leanings}, {@link FirstUse}, {@link Wished}, {@link PatchworkForm}. */
class LeaningsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-01-01T10:00:00Z"), ZoneOffset.UTC);

    private static final Stash STASH = Stashes.scraps(20, 3);

    private static final Leanings ALL =
            new Leanings("Rust", List.of("Oat", "Kelp"), new Leanings.Colours("frames", ""), "wide", true);

    @TempDir
    Path folder;

    private Store store() {
        return Store.open(folder.resolve("work.db"), CLOCK);
    }

    @Test
    void what_is_kept_comes_back() {
        try (Store store = store()) {
            assertThat(Leanings.of(store)).isEqualTo(Leanings.NONE);
            ALL.keep(store);
            assertThat(Leanings.of(store)).isEqualTo(ALL);
            Leanings.NONE.keep(store);
            assertThat(Leanings.of(store).isOpen()).isTrue();
        }
    }

    @Test
    void each_wish_is_set_and_taken_back_alone() {
        for (String what : List.of("hearth", "without", "scheme", "contrast", "bars", "quick")) {
            Leanings set = Leanings.NONE.with(what, "Slate");
            assertThat(set.isOpen()).as(what).isFalse();
            assertThat(set.less(what, "Slate")).as(what).isEqualTo(Leanings.NONE);
            assertThat(set.with(what, "Slate")).as("twice is once").isEqualTo(set);
        }
        assertThat(ALL.less("without", "Oat").without()).containsExactly("Kelp");
        assertThat(ALL.with("nothing we know", "x")).isEqualTo(ALL);
    }

    @Test
    void fabrics_left_out_are_not_planned_from() {
        assertThat(ALL.from(STASH).fabrics())
                .extracting(Fabric::name)
                .containsExactlyInAnyOrder("Slate", "Rust", "Shell");
        assertThat(ALL.kind()).contains(Scheme.Kind.FRAMES);
    }

    @Test
    void a_fabric_for_the_hearth_comes_first_and_the_others_by_how_much_there_is() {
        List<String> fabrics = ALL.in(WishForm.OPEN, STASH, true).fabrics();
        assertThat(fabrics).hasSize(STASH.fabrics().size()).startsWith("Rust");
        List<Double> areas = fabrics.subList(1, fabrics.size()).stream()
                .map(name -> STASH.of(STASH.fabric(name).orElseThrow()).stream()
                        .mapToDouble(Piece::areaMm2)
                        .sum())
                .toList();
        assertThat(areas).isSortedAccordingTo(Collections.reverseOrder());
        assertThat(Leanings.NONE
                        .with("hearth", "Velvet")
                        .in(WishForm.OPEN, STASH, true)
                        .fabrics())
                .as("a fabric that is not there")
                .isEmpty();
    }

    @Test
    void narrow_and_wide_bars_are_wished_in_her_unit() {
        assertThat(ALL.in(WishForm.OPEN, STASH, true).bars()).isEqualTo("12.5");
        assertThat(ALL.width(false)).isEqualTo("5");
        assertThat(Leanings.NONE.with("bars", "narrow").width(false)).isEqualTo("2 1/2");
        assertThat(Leanings.NONE.width(true)).isEmpty();
    }

    @Test
    void wishes_for_a_gift_before_wait_until_she_says_whether_they_hold() {
        try (Store store = store()) {
            Leanings.ofBefore(store, "a box", Language.ENGLISH);
            assertThat(Leanings.waiting(store)).as("nothing was wished").isEmpty();
            ALL.keep(store);
            Leanings.ofBefore(store, "", Language.ENGLISH);
            assertThat(Leanings.waiting(store)).contains("the cloth before");
            Leanings.settle(store, true);
            assertThat(Leanings.waiting(store)).isEmpty();
            assertThat(Leanings.of(store)).isEqualTo(ALL);
            FirstUse.keep(store, STASH.pieces().subList(0, 2));
            Leanings.settle(store, false);
            assertThat(Leanings.of(store)).isEqualTo(Leanings.NONE);
            assertThat(FirstUse.of(store, STASH).pieces()).isEmpty();
        }
    }

    @Test
    void pieces_to_be_used_first_are_those_that_are_still_there() {
        List<Piece> some = STASH.pieces().subList(2, 6);
        try (Store store = store()) {
            FirstUse.keep(store, some);
            assertThat(FirstUse.of(store, STASH).pieces()).isEqualTo(some);
            Stash less = new Stash(STASH.pieces().subList(4, 20));
            assertThat(FirstUse.of(store, less).pieces())
                    .isEqualTo(STASH.pieces().subList(4, 6));
        }
        Fabric oat = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric kelp = Stashes.fabric(1, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Size size = Size.square(Length.cm(10));
        assertThat(FirstUse.words(new Stash(List.of(
                        Stashes.piece(2, oat, size), Stashes.piece(3, oat, size), Stashes.piece(4, kelp, size)))))
                .isEqualTo("Oat 2, Kelp");
    }

    @Test
    void what_the_next_cloth_is_for_is_kept_until_it_is_another() {
        Purpose box = new Purpose("box 12 x 9 x 4 cm", "four-corner", "");
        Purpose size = new Purpose("", "", "50 cm");
        try (Store store = store()) {
            assertThat(Wished.of(store)).isEqualTo(new Purpose("", "", ""));
            Wished.keep(store, box);
            assertThat(Wished.of(store)).isEqualTo(box);
            Wished.keep(store, size);
            assertThat(Wished.of(store)).isEqualTo(size);
        }
    }

    @Test
    void how_a_cloth_is_put_together_is_one_of_the_choices_and_nothing_else() {
        assertThat(PatchworkForm.read("nonsense", ScrapForm.OPEN).way()).isEmpty();
        for (PatchworkForm.Way way : PatchworkForm.read("", ScrapForm.OPEN).ways()) {
            PatchworkForm form = PatchworkForm.read(way.word(), ScrapForm.OPEN);
            assertThat(form.way()).isEqualTo(way.word());
            Optional<Patchwork> patchwork = form.patchwork(WishForm.OPEN, Ruler.MILLIMETRES);
            assertThat(patchwork.isPresent()).isEqualTo(!way.word().isEmpty());
            try (Store store = Store.open(folder.resolve(way.word() + ".db"), CLOCK)) {
                form.keep(store);
                assertThat(PatchworkForm.of(store)).isEqualTo(form);
                WishView view = WishView.of(
                        store,
                        Purpose.NOTHING,
                        new MeasuredSeams(List.of()).usual(settings(store)),
                        settings(store).voice(),
                        "");
                assertThat(view.patchwork()).isEqualTo(form);
                assertThat(view.tied().is()).isFalse();
                assertThat(view.tied().larger()).isEmpty();
            }
        }
        assertThat(PatchworkForm.read("3", ScrapForm.OPEN)
                        .patchwork(WishForm.OPEN, Ruler.MILLIMETRES)
                        .orElseThrow()
                        .blocks())
                .isPresent();
        assertThat(PatchworkForm.read("free", ScrapForm.OPEN).patchwork(WishForm.OPEN, Ruler.MILLIMETRES))
                .contains(Patchwork.free());
    }

    @Test
    void wishes_of_scraps_are_kept_and_hold_for_scraps_alone_and_for_pieces_that_are_there() {
        List<String> ids = STASH.pieces().stream().map(Piece::id).limit(2).toList();
        Map<String, String> fields = Map.of("scraps", "as-they-are", "most-trim", "1.2", "sizes", "even", "bands", "");
        ScrapForm scraps =
                ScrapForm.read(name -> fields.getOrDefault(name, ""), List.of(ids.get(0), ids.get(1), "gone"));
        try (Store store = store()) {
            PatchworkForm.read("free", scraps).keep(store);
            assertThat(PatchworkForm.of(store)).isEqualTo(PatchworkForm.read("free", scraps));
        }
        Patchwork patchwork = PatchworkForm.read("free", scraps)
                .from(STASH)
                .patchwork(WishForm.OPEN, Ruler.MILLIMETRES)
                .orElseThrow();
        assertThat(patchwork.cutting()).isEqualTo(Patchwork.ScrapRule.AS_THEY_ARE);
        assertThat(patchwork.wishes())
                .isEqualTo(new Patchwork.ScrapWishes(
                        ids,
                        Optional.empty(),
                        Optional.of(Length.mm(12)),
                        Patchwork.Sizes.EVEN,
                        Patchwork.Direction.ANY));
        assertThat(PatchworkForm.read("3", scraps)
                        .patchwork(WishForm.OPEN, Ruler.MILLIMETRES)
                        .map(Patchwork::wishes))
                .contains(Patchwork.ScrapWishes.NONE);
        ScrapForm middle =
                ScrapForm.read(name -> name.equals("middle") ? "gone" : name.equals("bands") ? "down" : "", List.of());
        assertThat(middle.among(ids).of("middle")).isEmpty();
        assertThat(middle.among(ids).of("bands")).isEqualTo("down");
    }

    private static Settings settings(Store store) {
        boolean asked = store.setting("ruler").isPresent();
        return new Settings(Ruler.MILLIMETRES, Paper.A4, Optional.empty(), Language.ENGLISH, asked);
    }

    /** Six seams are the fewest that tell anything of her hand; the middle of them is what a seam eats. */
    @Test
    void her_hand_is_the_middle_of_all_seams_she_measured() {
        List<Length> five = Collections.nCopies(5, Length.mm(15));
        MeasuredSeams few = new MeasuredSeams(List.of(new MeasuredSeams.OfCloth("Dawn", five)));
        assertThat(few.hand()).isEmpty();
        MeasuredSeams enough = new MeasuredSeams(List.of(
                new MeasuredSeams.OfCloth("Dawn", five),
                new MeasuredSeams.OfCloth("Dusk", List.of(Length.mm(17), Length.mm(18)))));
        assertThat(enough.hand().map(SewingHand::seams)).contains(7);
        assertThat(enough.hand().map(SewingHand::eats)).contains(Length.mm(15));
    }

    @Test
    void what_a_cloth_ties_round_is_said_on_the_rulers_marks() {
        for (Capacity capacity : Capacity.of(Size.square(Length.cm(70)), Length.cm(12))) {
            HeldGift held = HeldGift.of(capacity, Voice.english(Ruler.MILLIMETRES));
            assertThat(held.fits()).isEqualTo(capacity.largest().isPresent());
            assertThat(held.tie()).isEqualTo(capacity.tie().words());
            assertThat(held.largest().equals("too small for this tie")).isEqualTo(!held.fits());
        }
        assertThat(Capacity.of(Size.square(Length.cm(8)), Length.cm(12)))
                .allMatch(capacity ->
                        !HeldGift.of(capacity, Voice.english(Ruler.MILLIMETRES)).fits());
    }
}
