package hearthcloth.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.model.Wish.Cut;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WishReaderTest {

    private WishWords words = WishWords.NOTHING;

    private static Stash stash() {
        String text = "fabric,width,length\nKelp,44 in,2 yd\n\"Fog, pale\",44 in,1 yd\nFog,9 in,9 in";
        return ((StashFile.Read) StashFile.read(text, Optional.empty())).stash();
    }

    private Wish wish(Ruler ruler) {
        return new WishReader(words, stash(), Usual.of(ruler), Door.SHELL).wish(Optional.empty());
    }

    @Test
    void what_is_left_out_stays_open_or_is_what_is_usual() {
        Wish wish = wish(Ruler.EIGHTHS);
        assertThat(wish.target()).isEqualTo(Wish.Target.none());
        assertThat(wish.shape()).isEqualTo(OpenShape.shape());
        assertThat(wish.making()).isEqualTo(Making.inches());
        assertThat(wish.rules()).isEqualTo(PiecingRules.inches());
        assertThat(wish.preferences()).isEqualTo(new Wish.Preferences(List.of(), 4, 1, Ruler.EIGHTHS));
        assertThat(wish(Ruler.MILLIMETRES).making()).isEqualTo(Making.metric());
        assertThat(wish(Ruler.MILLIMETRES).rules()).isEqualTo(PiecingRules.metric());
    }

    @Test
    void colours_are_wished_by_the_name_of_their_plan_and_a_word_for_contrast() {
        words = words.with(WishField.SCHEME, "light-to-dark").with(WishField.CONTRAST, "Quiet");
        assertThat(wish(Ruler.EIGHTHS).preferences().looks())
                .isEqualTo(new Wish.Looks(Optional.empty(), Optional.of(Scheme.Kind.GRADED), Contrast.QUIET));
        for (Scheme.Kind kind : Scheme.WISHED) {
            assertThat(Scheme.Kind.named(kind.title())).contains(kind);
        }
        words = words.with(WishField.SCHEME, "as the fabric falls").with(WishField.CONTRAST, "loud");
        assertThatThrownBy(() -> wish(Ruler.EIGHTHS))
                .hasMessageContaining("\"as the fabric falls\" is no plan of colour; write stash or one of two halves")
                .hasMessageContaining("\"loud\" is no contrast; write one of most, reads, easy, quiet, melts");
    }

    @Test
    void stash_leaves_it_to_the_stash() {
        words = words.with(WishField.HEARTH, "stash");
        words = words.with(WishField.BARS, "Stash");
        words = words.with(WishField.ROUNDS, "stash");
        words = words.with(WishField.ORDER, "stash");
        assertThat(wish(Ruler.EIGHTHS).shape()).isEqualTo(OpenShape.shape());
    }

    @Test
    void sizes_are_as_cut_unless_they_say_finished() {
        words = words.with(WishField.HEARTH, "12 x 9 in");
        words = words.with(WishField.BARS, "5 in, 4 1/2 in finished");
        Wish.Shape shape = wish(Ruler.EIGHTHS).shape();
        assertThat(shape.hearth())
                .contains(new Cut<>(new Size(Length.inches(12), Length.inches(9)), /* finished= */ false));
        assertThat(shape.bars())
                .containsExactly(new Cut<>(Length.inches(5), true), new Cut<>(Length.inches(9, 2), true));
    }

    @Test
    void widths_are_parted_by_commas_and_yet_may_have_decimal_ones() {
        words = words.with(WishField.BARS, "12,5, 10 cm");
        assertThat(wish(Ruler.MILLIMETRES).shape().bars())
                .extracting(Cut::measure)
                .containsExactly(Length.mm(125), Length.mm(100));
        words = words.with(WishField.BARS, "6½,5½ in");
        assertThat(wish(Ruler.EIGHTHS).shape().bars())
                .extracting(Cut::measure)
                .containsExactly(Length.inches(13, 2), Length.inches(11, 2));
        words = words.with(WishField.BARS, "5 in,4 in");
        assertThat(wish(Ruler.EIGHTHS).shape().bars()).hasSize(2);
    }

    @Test
    void seam_hem_and_margins() {
        words = words.with(WishField.SEAM, "5 + 12 mm");
        words = words.with(WishField.HEM, "1/4 + 1/2 in");
        words = words.with(WishField.CORNER, "mitred");
        words = words.with(WishField.FELL, "front");
        words = words.with(WishField.LEEWAY, "0 in");
        words = words.with(WishField.TRIM, "1/8");
        Making making = wish(Ruler.EIGHTHS).making();
        assertThat(making.seam()).isEqualTo(SeamKind.felled(Length.mm(5), Length.mm(12)));
        assertThat(making.hem()).isEqualTo(new Hem(Length.inches(1, 4), Length.inches(1, 2), Hem.Corner.MITRED));
        assertThat(making.fell()).isEqualTo(Face.FRONT);
        assertThat(making.leeway()).isEqualTo(Length.ZERO);
        assertThat(making.trim()).isEqualTo(Length.inches(1, 8));
        words = words.with(WishField.SEAM, "French");
        assertThat(wish(Ruler.EIGHTHS).making().seam().build()).isEqualTo(SeamKind.Build.FRENCH);
    }

    @Test
    void rules_order_and_preferences() {
        words = words.with(WishField.LEAST_PIECE, "3 in");
        words = words.with(WishField.CLEARANCE, "0 in");
        words = words.with(WishField.MOST_JOINS, "0");
        words = words.with(WishField.ORDER, "two-sides");
        words = words.with(WishField.ROUNDS, "3");
        words = words.with(WishField.PROPOSALS, "2");
        words = words.with(WishField.SEED, "-5");
        words = words.with(WishField.FABRICS, "fog, pale, kelp,fog");
        Wish wish = wish(Ruler.EIGHTHS);
        assertThat(wish.rules()).isEqualTo(new PiecingRules(Length.inches(3), Length.ZERO, 0));
        assertThat(wish.shape().order()).contains(Order.TWO_SIDES);
        assertThat(wish.shape().rounds()).contains(3);
        assertThat(wish.preferences())
                .isEqualTo(new Wish.Preferences(List.of("Fog, pale", "Kelp", "Fog"), 2, -5, Ruler.EIGHTHS));
    }

    @Test
    void a_gift_asks_for_at_least_its_cloth_on_a_mark_of_the_ruler() {
        Optional<GiftWish> gift = GiftWish.read("box 30 x 20 x 8 cm", "errand", null);
        words = words.with(WishField.SLACK, "none");
        Wish wish = new WishReader(words, stash(), Usual.of(Ruler.MILLIMETRES), Door.SHELL).wish(gift);
        assertThat(wish.target().atLeast()).isTrue();
        assertThat(wish.target().size()).contains(Size.square(Length.mm(708)));
        words = words.with(WishField.SIZE, "60 cm");
        Wish sized = wish(Ruler.MILLIMETRES);
        assertThat(sized.target()).isEqualTo(new Wish.Target(Optional.of(Size.square(Length.cm(60))), false));
    }

    @Test
    void a_cloth_for_a_gift_is_planned_larger_by_what_sewing_may_take() {
        Optional<GiftWish> gift = GiftWish.read("box 30 x 20 x 8 cm", "errand", null);
        WishReader usual = new WishReader(words, stash(), Usual.of(Ruler.MILLIMETRES), Door.SHELL);
        assertThat(usual.wish(gift).target().size()).contains(Size.square(Length.mm(708 + 12)));
        words = words.with(WishField.SLACK, "25 mm");
        WishReader hers = new WishReader(words, stash(), Usual.of(Ruler.MILLIMETRES), Door.SHELL);
        assertThat(hers.wish(gift).target().size()).contains(Size.square(Length.mm(708 + 25)));
        words = words.with(WishField.SLACK, "30 cm");
        WishReader far = new WishReader(words, stash(), Usual.of(Ruler.MILLIMETRES), Door.SHELL);
        assertThatThrownBy(() -> far.wish(gift)).hasMessageStartingWith("--slack: \"30 cm\" is more than 10 cm");
    }
}
