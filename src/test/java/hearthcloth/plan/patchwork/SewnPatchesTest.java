package hearthcloth.plan.patchwork;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.piecing.compose.Composed;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** From the search's tree of net sizes to a cloth and its cuts. */
class SewnPatchesTest {

    private static final Plan.Story STORY = Told.story("By hand", "Good.");

    /**
     * 20 in finished are 20¼ net. A first patch cut 86 has 10 in of net: it shows that and a seam less hem and wide
     * allowance, 9¾ in; the other 10¼ + ¾ − ¼ − ½ = 10¼ in.
     */
    @Test
    void allowances_are_put_back_by_hand() {
        MarkedHeap heap =
                Heaps.heap(Optional.empty(), Heaps.piece(2, Heaps.WHITE, 90, 90), Heaps.piece(3, Heaps.GREY, 90, 90));
        Pieced tree = new Joint(true, new ScrapPatch(1, false, 86, 88), new ScrapPatch(0, false, 88, 88));

        assertThat(SewnPatches.of(tree, Heaps.eighths(160, 80), heap))
                .isEqualTo(Notation.parse("(patch1 \"Grey\" 247.65 x 254 same |> patch2 \"White\" 260.35 x 254 same)"));
        assertThat(tree.patches().toList()).extracting(ScrapPatch::scrap).containsExactly(1, 0);
    }

    /** A rectangle of net cut in two at random until it is small. */
    private static Pieced random(long width, long height, Random random, List<Piece> pieces) {
        long longer = Math.max(width, height);
        if (longer < 50 || random.nextInt(5) == 0) {
            pieces.add(Heaps.piece(pieces.size() + 2, Heaps.GREY, width + 6, height + 6));
            return new ScrapPatch(pieces.size() - 1, false, width + 6, height + 6);
        }
        boolean beside = width >= height;
        long at = 18L + random.nextInt((int) longer - 36);
        Pieced first = random(beside ? at : width, beside ? height : at, random, pieces);
        Pieced second = random(beside ? width - at : width, beside ? height : height - at, random, pieces);
        return new Joint(beside, first, second);
    }

    @Test
    void a_cloth_has_the_wished_size_and_every_patch_is_cut_as_the_search_reckoned() {
        Random random = new Random(12);
        for (int i = 0; i < 40; i++) {
            List<Piece> pieces = new ArrayList<>();
            Pieced tree = random(162, 242, random, pieces);
            MarkedHeap heap = Heaps.heap(Optional.empty(), pieces.toArray(Piece[]::new));
            Size size = new Size(Length.inches(20), Length.inches(30));

            Cloth cloth = new Cloth(SewnPatches.of(tree, size, heap), Making.inches());

            assertThat(cloth.finished()).isEqualTo(size);
            List<ScrapPatch> leaves = tree.patches().toList();
            List<Laid> laid = cloth.laid();
            for (int leaf = 0; leaf < leaves.size(); leaf++) {
                Size cut =
                        Heaps.eighths(leaves.get(leaf).width(), leaves.get(leaf).height());
                assertThat(laid.get(leaf).cut()).isEqualTo(cut);
                assertThat(laid.get(leaf).patch().place().id()).isEqualTo("patch" + (leaf + 1));
            }
            // and each is cut from its own piece as it is
            Plan plan = PatchworkPlans.of(tree, size, heap, List.of(), STORY);
            assertThat(plan.cuts()).allMatch(cut -> cut.tree() instanceof CutTree.Kept);
            assertThat(plan.story().goodAt())
                    .hasToString(
                            "Good. " + pieces.size() + (pieces.size() == 1 ? " scrap: " : " scraps: ") + pieces.size()
                                    + " just as they are, 0 trimmed, 0 cut in two; 0.0 % of what is sewn is trimmed off and lost.");
        }
    }

    /**
     * Three patches: one as it is; one trimmed from a piece 4 eighths wider, of which 4 · 88 are lost; one cut turned from a
     * long piece, whose rest can be used again.
     */
    @Test
    void how_scraps_are_used_is_counted_and_cut_in_the_order_of_sewing() {
        MarkedHeap heap = Heaps.heap(
                Optional.empty(),
                Heaps.piece(2, Heaps.WHITE, 88, 200),
                Heaps.piece(3, Heaps.GREY, 90, 88),
                Heaps.piece(4, Heaps.GREY, 86, 88));
        Pieced tree = new Joint(
                true,
                new Joint(true, new ScrapPatch(2, false, 86, 88), new ScrapPatch(1, false, 86, 88)),
                new ScrapPatch(0, true, 88, 88));
        Plan plan = PatchworkPlans.of(tree, Heaps.eighths(240, 80), heap, List.of(), STORY);

        assertThat(plan.cuts()).extracting(cut -> cut.piece().id()).containsExactly("4", "3", "2");
        assertThat(plan.story().goodAt())
                .asString()
                .startsWith("Good. 3 scraps: 1 just as they are, 1 trimmed, 1 cut in two; 1.5 % of what is sewn is");
        List<PieceCut> cuts = ScrapCuts.of(plan.cloth(), tree.patches().toList(), heap);
        assertThat(cuts).isEqualTo(plan.cuts());
        assertThat(cuts.get(2).tree().kept()).singleElement().satisfies(kept -> {
            assertThat(kept.turned()).isTrue();
            assertThat(kept.at().size()).isEqualTo(Heaps.eighths(88, 88));
        });
        assertThat(cuts.get(2).tree().left()).extracting(left -> left.size()).containsExactly(Heaps.eighths(88, 112));
    }

    @Test
    void what_a_piece_has_beyond_its_last_mark_is_parted_from_the_patch() {
        Piece odd = new Piece(
                "2",
                Heaps.GREY,
                new Size(Length.inches(11).plus(Length.mm(1)), Length.inches(11)),
                Piece.Washed.YES,
                2);
        MarkedHeap heap = Heaps.heap(Optional.empty(), odd);
        Plan plan = PatchworkPlans.of(new ScrapPatch(0, false, 88, 88), Heaps.eighths(80, 80), heap, List.of(), STORY);

        assertThat(plan.cuts().get(0).tree().left())
                .extracting(left -> left.size())
                .containsExactly(new Size(Length.mm(1), Length.inches(11)));
    }

    private static Cloth cloth(String notation) {
        return new Cloth(Notation.parse(notation), Making.metric());
    }

    @Test
    void where_four_seams_meet_is_told_from_the_cloth() {
        String above = "(patch1 \"a\" 80 x 60 same |> patch2 \"a\" 80 x 60 same)";
        assertThat(Meetings.sentence(
                        cloth("(" + above + " /> (patch3 \"a\" 80 x 60 same |> patch4 \"a\" 80 x 60 same))")))
                .hasToString("At one place seams meet on both sides of a third; the guide says where it is thick.");
        assertThat(Meetings.sentence(
                        cloth("(" + above + " /> (patch3 \"a\" 40 x 60 same |> patch4 \"a\" 120 x 60 same))")))
                .hasToString("Nowhere do four seams meet.");
        assertThat(
                        Meetings.sentence(
                                cloth(
                                        "(" + above
                                                + " /> (patch3 \"a\" 80 x 60 same |> (patch4 \"a\" 40 x 60 same |> patch5 \"a\" 40 x 60 same)))")))
                .asString()
                .startsWith("At one place");
    }

    @Test
    void how_clear_seams_keep_of_each_other_is_told_of_an_arrangement() {
        MarkedHeap heap = Heaps.heap(Optional.empty());
        Pieced tree = new ScrapPatch(0, false, 88, 88);
        assertThat(Meetings.sentence(new Composed(tree, List.of(), 0), heap).english())
                .isEqualTo("No two seams end within 1 in of each other across a third. No fabric lies beside itself.");
        assertThat(Meetings.sentence(new Composed(tree, List.of(), 2), heap).english())
                .isEqualTo("No two seams end within 1 in of each other across a third.");
    }
}
