package hearthcloth.guideline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Length;
import org.junit.jupiter.api.Test;

/** A {@link Share} of a cloth's width, by hand and for every whole share there is. */
class ShareTest {

    @Test
    void a_share_holds_from_half_a_per_cent_below_its_least_to_half_above_its_most() {
        Share share = new Share(30, 40);
        Length whole = Length.mm(1000);
        assertThat(share.holds(Length.mm(294), whole)).isFalse();
        assertThat(share.holds(Length.mm(295), whole)).isTrue();
        assertThat(share.holds(Length.mm(405), whole)).isTrue();
        assertThat(share.holds(Length.mm(406), whole)).isFalse();
    }

    /** Of a whole of 500 mm every part in millimetres that is one per cent at least and 99 at most. */
    @Test
    void what_is_taken_from_a_cloth_is_true_of_that_cloth() {
        Length whole = Length.mm(500);
        for (int mm = 5; mm <= 495; mm++) {
            Share about = Share.about(Length.mm(mm), whole);
            assertThat(about.holds(Length.mm(mm), whole))
                    .as(mm + " of 500 in " + about)
                    .isTrue();
            assertThat(about.most() - about.least()).isBetween(3, 6);
        }
        assertThat(Share.about(Length.mm(175), whole)).isEqualTo(new Share(32, 38));
    }

    @Test
    void every_share_is_read_back_as_it_is_written() {
        for (int least = 1; least <= 99; least++) {
            for (int most = least; most <= 99; most++) {
                Share share = new Share(least, most);
                assertThat(RuleText.share(share.toString())).contains(share);
            }
        }
    }

    @Test
    void what_is_no_share_is_refused() {
        assertThatThrownBy(() -> new Share(0, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Share(1, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Share(40, 30)).isInstanceOf(IllegalArgumentException.class);
    }
}
