package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Told;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One patch of 8 × 8 cm, cut 10 × 10 cm with its hem, from pieces divided by hand. */
class CutLineTest {

    private static final MakerWords WORDS = new MakerWords(Voice.english(Ruler.MILLIMETRES));

    private static Rect rect(long x, long y, long width, long height) {
        return Rect.at(Length.cm(x), Length.cm(y), new Size(Length.cm(width), Length.cm(height)));
    }

    private static CutTree left(long x, long y, long width, long height) {
        return new CutTree.Left(rect(x, y, width, height));
    }

    private static CutTree kept(long x, long y) {
        return new CutTree.Kept(rect(x, y, 10, 10), "hearth", false);
    }

    private static Plan plan(CutTree tree) {
        Cloth cloth = new Cloth(Notation.parse("hearth \"Oat\" 80 x 80 same"), Making.metric());
        Piece piece = new Piece("2", Cloths.OAT, tree.at().size(), Piece.Washed.YES, 2);
        Plan.Story story = Told.story("By hand", "");
        return new Plan(story, cloth, PiecingRules.metric(), List.of(new PieceCut(piece, tree)), new Bound(0, 0));
    }

    private static PieceTask task(CutTree tree) {
        return CuttingOut.of(plan(tree), WORDS).get(0);
    }

    @Test
    void cuts_are_numbered_in_order_and_each_says_how_far_from_which_edge_and_what_it_gives() {
        CutTree strip = CutTree.parted(rect(0, 0, 10, 16), false, Length.cm(10), kept(0, 0), left(0, 10, 10, 6));
        CutTree tree = CutTree.parted(rect(0, 0, 15, 16), true, Length.cm(10), strip, left(10, 0, 5, 16));

        PieceTask task = task(tree);

        assertThat(task.title()).isEqualTo("Piece 2: Oat, 15 × 16 cm");
        assertThat(task.lines())
                .containsExactly(
                        new CutLine(
                                1,
                                (CutTree.Parted) tree,
                                Side.LEFT,
                                Length.cm(10),
                                "Cut the piece from top to bottom, 10 cm from its left edge. This gives strip 2a and leaves"
                                        + " offcut 1."),
                        new CutLine(
                                2,
                                (CutTree.Parted) strip,
                                Side.TOP,
                                Length.cm(10),
                                "Cut strip 2a from left to right, 10 cm from its top edge. This gives the hearth and leaves"
                                        + " offcut 2."));
        assertThat(task.gives()).containsExactly("The hearth: 10 × 10 cm");
        assertThat(task.left()).containsExactly("Keep offcut 1: 5 × 16 cm", "Keep offcut 2: 10 × 6 cm");
    }

    /** The far edge of a strip that was cut off is straight, and the patch beside it is measured from there. */
    @Test
    void a_patch_at_an_edge_that_is_cut_already_is_measured_from_that_edge() {
        CutTree strip = CutTree.parted(rect(0, 0, 16, 10), true, Length.cm(6), left(0, 0, 6, 10), kept(6, 0));
        CutTree upright = CutTree.parted(rect(0, 0, 20, 10), true, Length.cm(16), strip, left(16, 0, 4, 10));
        assertThat(task(upright).lines().get(1))
                .isEqualTo(new CutLine(
                        2,
                        (CutTree.Parted) strip,
                        Side.RIGHT,
                        Length.cm(10),
                        "Cut strip 2a from top to bottom, 10 cm from its right edge. This gives the hearth and leaves offcut"
                                + " 1."));
        assertThat(task(upright).left()).containsExactly("Keep offcut 1: 6 × 10 cm", "1 scrap too small to keep");

        CutTree column = CutTree.parted(rect(0, 0, 10, 16), false, Length.cm(6), left(0, 0, 10, 6), kept(0, 6));
        CutTree level = CutTree.parted(rect(0, 0, 10, 20), false, Length.cm(16), column, left(0, 16, 10, 4));
        assertThat(task(level).lines().get(1).from()).isEqualTo(Side.BOTTOM);
        assertThat(task(level).lines().get(1).measure()).isEqualTo(Length.cm(10));
    }

    @Test
    void at_an_edge_of_the_piece_itself_the_rest_is_measured_from_the_left_or_the_top() {
        CutTree level = CutTree.parted(rect(0, 0, 10, 16), false, Length.cm(6), left(0, 0, 10, 6), kept(0, 6));
        assertThat(task(level).lines()).singleElement().satisfies(line -> {
            assertThat(line.from()).isEqualTo(Side.TOP);
            assertThat(line.measure()).isEqualTo(Length.cm(6));
            assertThat(line.sentence()).endsWith("6 cm from its top edge. This gives offcut 1 and leaves the hearth.");
        });
        CutTree upright = CutTree.parted(rect(0, 0, 13, 10), true, Length.cm(3), left(0, 0, 3, 10), kept(3, 0));
        assertThat(task(upright).lines()).singleElement().satisfies(line -> {
            assertThat(line.from()).isEqualTo(Side.LEFT);
            assertThat(line.sentence()).contains("This gives a scrap too small to keep and leaves the hearth.");
        });
    }

    @Test
    void a_piece_of_just_the_size_is_taken_whole() {
        assertThat(task(kept(0, 0)).lines()).isEmpty();
        assertThat(task(kept(0, 0)).gives()).containsExactly("The hearth: 10 × 10 cm, the whole piece");
    }

    @Test
    void what_to_gather_is_each_fabric_with_its_pieces_and_does_not_change_afterwards() {
        Gather gather = Gathering.of(plan(kept(0, 0)), WORDS);
        assertThat(gather.fabrics()).containsExactly(new Gather.FabricNeed("Oat", List.of("piece 2, 10 × 10 cm")));
        assertThat(gather.washing()).containsExactly("All the fabric has been washed.");

        List<String> pieces = new ArrayList<>(List.of("piece 2"));
        Gather.FabricNeed need = new Gather.FabricNeed("Oat", pieces);
        List<String> tools = new ArrayList<>(List.of("Pins"));
        Gather copied = new Gather(List.of(need), tools, tools, tools);
        pieces.clear();
        tools.clear();
        assertThat(need.pieces()).containsExactly("piece 2");
        assertThat(copied).isEqualTo(new Gather(List.of(need), List.of("Pins"), List.of("Pins"), List.of("Pins")));
    }

    /** A needle of size 90 where ten layers meet; a seam that runs into a hem makes twelve (docs/sources.md#needles). */
    @Test
    void thick_cloths_ask_for_a_thicker_needle() {
        assertThat(Gathering.of(plan(kept(0, 0)), WORDS).tools())
                .contains("Sewing machine with a new needle, size 80/12");
        assertThat(Gathering.of(Cloths.metric(), WORDS).tools())
                .contains("Sewing machine with a new needle, size 90/14");
    }
}
