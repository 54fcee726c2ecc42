package hearthcloth.web.home;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Piece;
import hearthcloth.web.kit.Swatches;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What lies on the first page's table: her scraps ({@link ScrapHeap}) and the first run ({@link FirstRun}). */
class ScrapHeapTest {

    private static final Pattern PIECE = Pattern.compile("<rect class=\"under\"");

    private static String heap(List<Piece> pieces) {
        return ScrapHeap.of(pieces, new Swatches(Stashes.scraps(40, 3).fabrics(), Map.of()));
    }

    @Test
    void the_same_pieces_lie_the_same_tomorrow_and_otherwise_when_one_is_gone() {
        List<Piece> pieces = Stashes.scraps(20, 3).pieces();
        assertThat(heap(pieces)).isEqualTo(heap(pieces));
        assertThat(heap(pieces.subList(1, 20))).isNotEqualTo(heap(pieces));
    }

    /** No more than thirty are thrown on the table; fewer all lie there. */
    @Test
    void every_piece_lies_there_once_up_to_thirty() {
        List<Piece> many = new ArrayList<>(Stashes.scraps(60, 3).pieces());
        for (int count : new int[] {0, 1, 7, 29, 30, 31, 60}) {
            assertThat(PIECE.matcher(heap(many.subList(0, count))).results().count())
                    .isEqualTo(Math.min(30, count));
        }
        Collections.reverse(many);
        assertThat(heap(many)).startsWith("<svg").endsWith("</svg>").doesNotContain("NaN");
    }

    @Test
    void the_first_run_has_nine_scraps_and_twelve_bars() {
        String film = FirstRun.film();
        assertThat(film).startsWith("<svg").endsWith("</svg>").doesNotContain("NaN");
        assertThat(Pattern.compile("in drop d\\d").matcher(film).results().count())
                .isEqualTo(9);
        assertThat(FirstRun.film()).isEqualTo(film);
    }
}
