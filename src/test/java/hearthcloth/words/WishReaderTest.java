package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.model.Wish.Cut;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WishReaderTest {

    private final WishOptions options = new WishOptions();

    private static Stash stash() {
        String text = "fabric,width,length\nKelp,44 in,2 yd\n\"Fog, pale\",44 in,1 yd\nFog,9 in,9 in";
        return ((StashFile.Read) StashFile.read(text, Optional.empty())).stash();
    }

    private Wish wish(Ruler ruler) {
        return new WishReader(options, stash(), ruler).wish(Optional.empty());
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
    void stash_leaves_it_to_the_stash() {
        options.hearth = "stash";
        options.bars = "Stash";
        options.rounds = "stash";
        options.order = "stash";
        assertThat(wish(Ruler.EIGHTHS).shape()).isEqualTo(OpenShape.shape());
    }

    @Test
    void sizes_are_as_cut_unless_they_say_finished() {
        options.hearth = "12 x 9 in";
        options.bars = "5 in, 4 1/2 in finished";
        Wish.Shape shape = wish(Ruler.EIGHTHS).shape();
        assertThat(shape.hearth())
                .contains(new Cut<>(new Size(Length.inches(12), Length.inches(9)), /* finished= */ false));
        assertThat(shape.bars())
                .containsExactly(new Cut<>(Length.inches(5), true), new Cut<>(Length.inches(9, 2), true));
    }

    @Test
    void widths_are_parted_by_commas_and_yet_may_have_decimal_ones() {
        options.bars = "12,5, 10 cm";
        assertThat(wish(Ruler.MILLIMETRES).shape().bars())
                .extracting(Cut::measure)
                .containsExactly(Length.mm(125), Length.mm(100));
        options.bars = "6½,5½ in";
        assertThat(wish(Ruler.EIGHTHS).shape().bars())
                .extracting(Cut::measure)
                .containsExactly(Length.inches(13, 2), Length.inches(11, 2));
        options.bars = "5 in,4 in";
        assertThat(wish(Ruler.EIGHTHS).shape().bars()).hasSize(2);
    }

    @Test
    void seam_hem_and_margins() {
        options.seam = "5 + 12 mm";
        options.hem = "1/4 + 1/2 in";
        options.corner = "mitred";
        options.fell = "front";
        options.leeway = "0 in";
        options.trim = "1/8";
        Making making = wish(Ruler.EIGHTHS).making();
        assertThat(making.seam()).isEqualTo(SeamKind.felled(Length.mm(5), Length.mm(12)));
        assertThat(making.hem()).isEqualTo(new Hem(Length.inches(1, 4), Length.inches(1, 2), Hem.Corner.MITRED));
        assertThat(making.fell()).isEqualTo(Face.FRONT);
        assertThat(making.leeway()).isEqualTo(Length.ZERO);
        assertThat(making.trim()).isEqualTo(Length.inches(1, 8));
        options.seam = "French";
        assertThat(wish(Ruler.EIGHTHS).making().seam().build()).isEqualTo(SeamKind.Build.FRENCH);
    }

    @Test
    void rules_order_and_preferences() {
        options.leastPiece = "3 in";
        options.clearance = "0 in";
        options.mostJoins = "0";
        options.order = "two-sides";
        options.rounds = "3";
        options.proposals = "2";
        options.seed = "-5";
        options.fabrics = "fog, pale, kelp,fog";
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
        Wish wish = new WishReader(options, stash(), Ruler.MILLIMETRES).wish(gift);
        assertThat(wish.target().atLeast()).isTrue();
        assertThat(wish.target().size()).contains(Size.square(Length.mm(708)));
        options.size = "60 cm";
        Wish sized = new WishReader(options, stash(), Ruler.MILLIMETRES).wish(Optional.empty());
        assertThat(sized.target()).isEqualTo(new Wish.Target(Optional.of(Size.square(Length.cm(60))), false));
    }
}
