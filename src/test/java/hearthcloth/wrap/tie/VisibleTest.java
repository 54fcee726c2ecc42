package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.making.Face;
import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.SourceTable;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.Visible;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VisibleTest {

    private static final Length TAIL = Length.cm(10);
    private static final Gift INCH_BOX = Gift.parse("box 12 x 9 x 4 in", null);
    private static final Gift CM_BOX = Gift.parse("box 22 x 15 x 8 cm", null);

    private static Visible inches(Tie tie, Placing placing) {
        Fit fit = tie.fit(INCH_BOX, Size.square(Length.inches(77, 2)), TAIL, placing);
        return Visible.of(TiedFold.of(fit));
    }

    private static Visible centimetres(Tie tie) {
        return Visible.of(TiedFold.of(tie.fit(CM_BOX, Size.square(Length.cm(70)), TAIL)));
    }

    /** The rows of the second derivation (docs/sources.md#visible): its grid of 260 × 260 points is good to a hundredth. */
    static Stream<SourceTable.Row> rows() {
        return SourceTable.rows("ties-second-visibility.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void zones_show_where_the_second_derivation_saw_them(SourceTable.Row row) {
        boolean diagonal = row.text("setting").equals("diagonal");
        Tie knotted = diagonal ? Tie.FOUR_CORNER : Tie.EDGE_ALONG_EDGE;
        Tie tie = row.text("tie").equals("four") ? knotted : Tie.ERRAND;
        boolean inch = row.text("case").startsWith("38.5 in");
        Visible visible = inch ? inches(tie, Placing.CENTRED) : centimetres(tie);
        double side = inch ? 977.9 : 700;
        double[] rings = inch
                ? new double[] {13.5 / 2 * 25.4, 22.0 / 2 * 25.4, 30.5 / 2 * 25.4, side / 2}
                : new double[] {side / 6, side / 3, side / 2};
        double[] sum = new double[6];
        for (ConvexPolygon part :
                zone(row.text("region"), rings, side, visible.fold().laying())) {
            Visible.Shares shares = visible.shares(part);
            sum[0] += shares.underneath();
            sum[1] += shares.sides();
            sum[2] += shares.top();
            sum[3] += shares.loose();
            sum[4] += shares.hidden();
            sum[5] += shares.total();
        }
        double grid = 0.02; // the zones' edges fall between the grid's points
        assertThat(sum[0] / sum[5]).as("bottom").isCloseTo(row.number("bottom"), within(grid));
        assertThat(sum[1] / sum[5]).as("walls").isCloseTo(row.number("walls_if_gathers_tucked"), within(grid));
        assertThat(sum[2] / sum[5]).as("top").isCloseTo(row.number("top_seen"), within(grid));
        if (!diagonal) {
            return; // gathered cords are counted with the ends here, apart from them there
        }
        assertThat(sum[3] / sum[5]).as("tails").isCloseTo(row.number("tails"), within(grid));
        assertThat(sum[4] / sum[5]).as("hidden").isCloseTo(row.number("hidden"), within(2 * grid));
    }

    private static List<ConvexPolygon> zone(String name, double[] rings, double side, Laying laying) {
        double c = side / 2;
        if (name.equals("whole")) {
            return List.of(laying.whole());
        }
        if (name.equals("centre")) {
            return List.of(laying.patch(c - rings[0], c - rings[0], c + rings[0], c + rings[0]));
        }
        int ring = name.charAt(4) - '0';
        double in = rings[ring - 1];
        double out = rings[ring];
        if (name.endsWith("corner")) {
            return List.of(
                    laying.patch(c - out, c - out, c - in, c - in),
                    laying.patch(c + in, c - out, c + out, c - in),
                    laying.patch(c - out, c + in, c - in, c + out),
                    laying.patch(c + in, c + in, c + out, c + out));
        }
        return List.of(
                laying.patch(c - in, c - out, c + in, c - in),
                laying.patch(c - in, c + in, c + in, c + out),
                laying.patch(c - out, c - in, c - in, c + in),
                laying.patch(c + in, c - in, c + out, c + in));
    }

    /** First derivation, 70 cm cloth with hearth 30, rings to 50 and 70, box 30 × 20 × 5, drawn in; cm². */
    @Test
    void what_shows_of_each_ring_is_what_the_first_derivation_cut() {
        Gift box = Gift.parse("box 30 x 20 x 5 cm", null);
        Fit fit = Tie.FOUR_CORNER.fit(box, Size.square(Length.cm(70)), TAIL);
        Visible visible = Visible.of(TiedFold.of(fit));
        Visible.Shares hearth = visible.shares(visible.fold().laying().patch(200, 200, 500, 500));
        assertThat(hearth.underneath() / 100).isCloseTo(571.32, within(0.01));
        assertThat(hearth.sides() / 100).isCloseTo(248.53, within(0.01));
        assertThat(hearth.top() / 100).isCloseTo(80.15, within(0.01));
        assertThat(hearth.seen()).isLessThan(0.4);
        Visible.Shares whole = visible.shares(visible.fold().laying().whole());
        assertThat((whole.underneath() + whole.sides() + whole.top()) / 100).isCloseTo(1700, within(1e-6));
    }

    /** A square cloth turned by quarters, or over, shows the same in the same places of its own turned or mirrored plan. */
    @Test
    void a_quarter_turn_and_the_other_face_move_what_shows() {
        Visible front = inches(Tie.FOUR_CORNER, Placing.CENTRED);
        Visible back = inches(Tie.FOUR_CORNER, Placing.CENTRED.showing(Face.BACK));
        Visible turned = inches(Tie.FOUR_CORNER, Placing.CENTRED.turned(1));
        double s = 977.9;
        ConvexPolygon corner = front.fold().laying().patch(0, 0, 300, 400);
        ConvexPolygon mirrored = back.fold().laying().patch(s - 300, 0, s, 400);
        assertThat(back.shares(mirrored).sides()).isCloseTo(front.shares(corner).sides(), within(1e-3));
        assertThat(back.shares(mirrored).top()).isCloseTo(front.shares(corner).top(), within(1e-3));
        // with the front out we look at the plan's back: an anticlockwise turn on the table is clockwise on the plan
        ConvexPolygon moved = turned.fold().laying().patch(0, s - 300, 400, s);
        ConvexPolygon other = turned.fold().laying().patch(s - 400, 0, s, 300);
        double top = front.shares(corner).top();
        assertThat(Math.min(
                        Math.abs(turned.shares(moved).top() - top),
                        Math.abs(turned.shares(other).top() - top)))
                .isLessThan(1e-3);
        for (Visible.Piece piece : front.pieces()) {
            boolean under = piece.facet().part() == Facet.Part.TUCK;
            boolean table =
                    piece.facet().motion().inside().dot(piece.facet().plane().out()) < 0;
            assertThat(under || table).isTrue();
        }
    }

    @Test
    void what_faces_an_eye_is_part_of_what_shows() {
        Visible visible = centimetres(Tie.FOUR_CORNER);
        ConvexPolygon whole = visible.fold().laying().whole();
        Visible.Shares shares = visible.shares(whole);
        assertThat(visible.from(Visible.View.ABOVE, whole)).isCloseTo(shares.top(), within(1e-6));
        assertThat(visible.from(Visible.View.FRONT, whole) / 100).isCloseTo(22 * 8, within(1e-6));
        assertThat(visible.from(Visible.View.CORNER, whole) / 100).isCloseTo(22 * 15 + 22 * 8 + 15 * 8, within(1e-6));
        assertThat(visible.from(Visible.View.UNDERNEATH, whole)).isCloseTo(shares.underneath(), within(1e-6));
    }

    @Test
    void a_shifted_gift_shows_other_cloth() {
        Placing off = Placing.CENTRED.shifted(Length.cm(4), Length.cm(3));
        Visible moved = inches(Tie.FOUR_CORNER, off);
        ConvexPolygon hearth = moved.fold().laying().patch(317, 317, 661, 661);
        Visible still = inches(Tie.FOUR_CORNER, Placing.CENTRED);
        ConvexPolygon same = still.fold().laying().patch(317, 317, 661, 661);
        assertThat(moved.shares(hearth).underneath())
                .isLessThan(still.shares(same).underneath());
        Visible.Shares all = moved.shares(moved.fold().laying().whole());
        assertThat(all.total()).isCloseTo(977.9 * 977.9, within(1e-3));
    }
}
