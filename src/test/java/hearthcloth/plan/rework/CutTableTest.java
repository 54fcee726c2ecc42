package hearthcloth.plan.rework;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A plan by hand, in eighths of an inch. Hearth cut 64 × 64 from piece 2, which is 80 wide; bars of 24 finished: 1A cut 32 ×
 * 68 is piece 3 as it is, 1B 32 × 94 is cut from piece 4 (40 wide), 1C 32 × 94 and 1D 32 × 120 are pieces 5 and 6.
 */
class CutTableTest {

    private static final Fabric OAT = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric KELP = Stashes.fabric(1, Fabric.Faces.SAME, Fabric.Nap.ANY);
    private static final Fabric SLATE = Stashes.fabric(2, Fabric.Faces.SAME, Fabric.Nap.ANY);

    private static final Piece HEARTH = piece(2, OAT, 80, 64);
    private static final Piece SPARE = piece(7, OAT, 70, 70);
    private static final List<Piece> BARS =
            List.of(piece(3, KELP, 32, 68), piece(4, KELP, 40, 94), piece(5, KELP, 32, 94), piece(6, KELP, 32, 120));

    private static final Stash STASH = stash();
    private static final Plan PLAN = plan(HEARTH, BARS, 24);

    private static Stash stash() {
        List<Piece> pieces = new ArrayList<>(BARS);
        pieces.add(0, HEARTH);
        pieces.add(SPARE);
        return new Stash(pieces);
    }

    private static Size eighths(long width, long height) {
        return new Size(Length.inches(width, 8), Length.inches(height, 8));
    }

    private static Piece piece(int row, Fabric fabric, long width, long height) {
        return Stashes.piece(row, fabric, eighths(width, height));
    }

    /** With the first bar so wide, and the hearth as much narrower. */
    private static Plan plan(Piece hearth, List<Piece> bars, long first) {
        List<Layout.Course> courses = new ArrayList<>(Layout.courses(Order.ROUND, 1, List.of(Length.inches(3))));
        courses.set(0, new Layout.Course(courses.get(0).side(), Length.inches(first, 8)));
        Layout layout = new Layout(eighths(84 - first, 60), courses);
        List<List<Fabric>> fabrics =
                bars.stream().map(bar -> List.of(bar.fabric())).toList();
        Design design = new Design(
                Order.ROUND,
                layout,
                new Scheme(Scheme.Kind.OWN, List.of(hearth.fabric()), fabrics),
                Making.inches(),
                PiecingRules.inches());
        Cloth cloth = design.whole();
        List<PieceCut> cuts = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>(bars);
        pieces.add(0, hearth);
        for (int i = 0; i < pieces.size(); i++) {
            Size size = cut(cloth, i);
            boolean turned = i == 2 || i == 4;
            cuts.add(
                    new PieceCut(pieces.get(i), cornered(pieces.get(i), turned ? size.turned() : size, id(i), turned)));
        }
        Plan.Story story = Told.story("By hand", "");
        return new Plan(story, cloth, PiecingRules.inches(), cuts, new Bound(0, 0)).checked();
    }

    private static String id(int i) {
        return List.of("hearth", "1A", "1B", "1C", "1D").get(i);
    }

    private static Size cut(Cloth cloth, int i) {
        return cloth.laid().stream()
                .filter(laid -> laid.patch().place().id().equals(id(i)))
                .findFirst()
                .orElseThrow()
                .cut();
    }

    /** A patch in the corner of a piece, with one cut beside it and one below where there is more. */
    private static CutTree cornered(Piece piece, Size size, String id, boolean turned) {
        Rect whole = Rect.at(Length.ZERO, Length.ZERO, piece.size());
        Rect at = Rect.at(Length.ZERO, Length.ZERO, size);
        CutTree tree = new CutTree.Kept(at, id, turned);
        if (at.height().isLessThan(whole.height())) {
            Rect column = Rect.at(Length.ZERO, Length.ZERO, new Size(at.width(), whole.height()));
            Rect below = Rect.at(
                    Length.ZERO,
                    at.bottom(),
                    new Size(at.width(), whole.height().minus(at.height())));
            tree = CutTree.parted(column, false, at.bottom(), tree, new CutTree.Left(below));
        }
        if (at.width().isLessThan(whole.width())) {
            Rect beside =
                    Rect.at(at.right(), Length.ZERO, new Size(whole.width().minus(at.width()), whole.height()));
            tree = CutTree.parted(whole, true, at.right(), tree, new CutTree.Left(beside));
        }
        return tree;
    }

    /** The hearth cut half an inch too narrow, and nothing else yet. */
    private static final Miscut MISCUT = Miscut.of(PLAN, Set.of(), "hearth", eighths(60, 64));

    private static final Design SETTLED = DesignEdits.settled(PLAN, Order.ROUND);

    private static final Design SMALLER = new DesignEdits(SETTLED).hearth(eighths(60, 64));

    private static CutTable table(Design design, boolean miscutPatch, boolean asPlanned) {
        return new CutTable(MISCUT, design, STASH, new CutTable.Use(miscutPatch, asPlanned));
    }

    private static List<String> said(CutTable table) {
        return table.stash().pieces().stream()
                .map(piece -> piece.fabric().name() + " "
                        + Ruler.EIGHTHS.write(piece.size(), hearthcloth.measure.Rounding.UP))
                .toList();
    }

    @Test
    void a_piece_that_is_begun_is_replaced_by_its_parts() {
        CutTable table = table(SETTLED, false, false);

        assertThat(table.stash().pieces())
                .doesNotContain(HEARTH)
                .containsAll(BARS)
                .contains(SPARE);
        assertThat(said(table)).hasSize(6).contains("Oat 2 × 8 in");
        CutTree.Parted cut = PLAN.cuts().get(0).tree().cuts().get(0);
        assertThat(table.isFixedCut(PLAN.cuts().get(0), cut)).isTrue();
        assertThat(table.isFixedCut(
                        PLAN.cuts().get(2), PLAN.cuts().get(2).tree().cuts().get(0)))
                .isFalse();
        assertThat(table.at(HEARTH, cut.second()).map(Piece::size)).contains(eighths(16, 64));
        assertThat(table.at(HEARTH, cut.first())).isEmpty();
        assertThat(table.miscut()).isEqualTo(MISCUT);
    }

    @Test
    void a_patch_that_is_used_all_the_same_is_a_fabric_of_its_own_and_as_large_as_it_measures() {
        CutTable table = table(SMALLER, true, false);
        assertThat(said(table)).contains("cut-of hearth Oat 7½ × 8 in", "Oat 2 × 8 in");
        // with the hearth as small as the patch it is cut from nothing else
        assertThat(table.design().scheme().hearth()).extracting(Fabric::name).containsExactly("cut-of hearth Oat");
        // where it is still to be as large as planned, it needs more
        assertThat(table(SETTLED, true, false).design().scheme().hearth())
                .extracting(Fabric::name)
                .containsExactly("Oat", "cut-of hearth Oat");
        // and where the patch is not used, the wished fabric alone
        assertThat(table(SETTLED, false, false).design().scheme().hearth()).containsExactly(OAT);
    }

    @Test
    void what_was_only_planned_and_is_still_right_is_left_as_it_is() {
        CutTable table = table(SETTLED, false, true);
        assertThat(said(table))
                .contains(
                        "cut-of 1A Kelp 4 × 8½ in",
                        "cut-of 1B Kelp 4 × 11¾ in",
                        "cut-of 1C Kelp 4 × 11¾ in",
                        "cut-of 1D Kelp 4 × 15 in",
                        "Kelp 1 × 11¾ in",
                        "Oat 8¾ × 8¾ in");
        assertThat(table.design().scheme().bars())
                .allSatisfy(bar -> assertThat(bar)
                        .singleElement()
                        .satisfies(fabric -> assertThat(fabric.name()).startsWith("cut-of 1")));
        // a smaller hearth makes 1B and 1D shorter, so what was planned for these is fabric again
        assertThat(said(table(SMALLER, true, true)))
                .contains("cut-of 1A Kelp 4 × 8½ in", "Kelp 4 × 11¾ in", "Kelp 4 × 15 in")
                .doesNotContain("cut-of 1B Kelp 4 × 11¾ in");
    }

    @Test
    void a_plan_for_the_table_is_told_over_whole_pieces() {
        CutTable table = table(SMALLER, true, true);
        Plan found = new DesignFit(table.stash())
                .find(table.design(), Sentence.itself("again"), Budget.steps(5_000))
                .orElseThrow();
        WholeStory story = new WholeStory(table);

        Plan plan = story.of(found, Told.story("again", ""));

        assertThat(STASH.pieces())
                .containsAll(plan.cuts().stream().map(PieceCut::piece).toList());
        assertThat(plan.cloth().finished()).isEqualTo(eighths(104, 108));
        assertThat(plan.cloth().patches()).extracting(patch -> patch.fabric()).containsOnly("Oat", "Kelp");
        PieceCut hearth = Objects.requireNonNull(plan.sources().get("hearth")).from();
        assertThat(hearth.piece()).isEqualTo(HEARTH);
        assertThat(plan.sources().get("hearth").kept().at())
                .isEqualTo(Rect.at(Length.ZERO, Length.ZERO, eighths(60, 64)));
        // half an inch was cut off too much, and the rest beyond is what it was
        assertThat(hearth.tree().left()).extracting(Rect::size).containsExactly(eighths(16, 64), eighths(4, 64));
        // of its two cuts both are made: the one that was planned, and the one that was too much
        assertThat(story.made()).containsExactlyInAnyOrder("2:1", "2:2");
    }

    @Test
    void the_slip_is_told_with_what_is_missing_on_each_side() {
        assertThat(WayWords.shortBy(MISCUT).english())
                .isEqualTo("The hearth is too small by ½ in across: it measures 7½ × 8 in.");
        assertThat(WayWords.shortBy(Miscut.of(PLAN, Set.of(), "1B", eighths(30, 90)))
                        .english())
                .isEqualTo("Bar 1B is too small by ¼ in across and ½ in along: it measures 3¾ × 11¼ in.");
        assertThat(WayWords.place(MISCUT, HEARTH)).isEqualTo(Rect.at(Length.ZERO, Length.ZERO, eighths(60, 64)));
        assertThat(WayWords.place(MISCUT, SPARE).size()).isEqualTo(eighths(0, 0));
    }

    @Test
    void each_way_says_what_is_done_from_which_piece_and_what_else_changes() {
        assertThat(english(WayWords.told(WayOn.Kind.SMALLER_CLOTH, MISCUT, PLAN)))
                .containsExactly("Use the hearth as it is; the cloth becomes 13½ × 13½ in.");
        assertThat(english(WayWords.told(WayOn.Kind.ANOTHER_PIECE, MISCUT, plan(SPARE, BARS, 24))))
                .containsExactly("Cut the hearth again, from piece 7, Oat, 8¾ × 8¾ in.");
        List<Piece> wider = new ArrayList<>(BARS);
        wider.set(0, piece(8, SLATE, 36, 68));
        assertThat(english(WayWords.told(WayOn.Kind.WIDER_NEIGHBOURS, MISCUT, plan(HEARTH, wider, 28))))
                .containsExactly(
                        "Use the hearth as it is, and cut bar 1A 4½ in wide; the cloth stays 13½ × 13½ in.",
                        "Bar 1A is then of Slate, not of Kelp.");
        Miscut bar = Miscut.of(PLAN, Set.of(), "1B", eighths(32, 90));
        List<Piece> other = new ArrayList<>(BARS);
        other.set(1, piece(9, KELP, 33, 94));
        assertThat(english(WayWords.told(WayOn.Kind.JOINED_STRIP, bar, plan(HEARTH, other, 24))))
                .containsExactly("Join a strip to bar 1B, from piece 9, Kelp, 4⅛ × 11¾ in.");
    }

    /** 1A is sewn on; 1C and 1D are used as they were cut; 1B is cut again. */
    @Test
    void the_rest_of_a_cloth_is_a_cloth_of_its_own_whose_hearth_is_the_sewn_work() {
        Stash left = new Stash(List.of(SPARE, piece(8, KELP, 40, 100)));
        RemainingWork rest = new RemainingWork(
                new RemainingPlan(PLAN, 1, Map.of()),
                SETTLED,
                Map.of("1C", List.of(Length.inches(21, 2)), "1D", List.of(Length.inches(27, 2))),
                100);
        Stash given = rest.stash(left);

        assertThat(rest.design().layout().hearth()).isEqualTo(eighths(84, 60));
        assertThat(rest.design().layout().courses())
                .isEqualTo(SETTLED.layout().courses().subList(1, 4));
        assertThat(given.pieces()).hasSize(2 + 1 + 3).containsAll(left.pieces());
        Piece freed = given.pieces().get(2);
        assertThat(freed).isEqualTo(new Piece("100", KELP, eighths(32, 94), Piece.Washed.UNKNOWN, 100));
        // work ¼ + ½ in beyond its 10½ in to the right, the hem's ½ in there and a narrow allowance on the others
        assertThat(given.pieces()).extracting(Piece::size).contains(eighths(84 + 2 + 4, 60 + 2 + 2));

        Plan found = ((DesignFit.Answer.Made)
                        new DesignFit(given).fit(rest.design(), Sentence.itself("again"), Budget.steps(5_000)))
                .plan();
        RemainingPlan.Resewn resewn = rest.composed(found);

        assertThat(resewn.plan().cloth()).isEqualTo(PLAN.cloth());
        assertThat(resewn.cuts()).singleElement().satisfies(cut -> {
            assertThat(cut.piece()).isEqualTo(freed);
            assertThat(cut.tree().kept()).extracting(CutTree.Kept::patch).containsExactly("1B");
        });
        assertThat(resewn.come()).containsExactly(freed);
        assertThat(Objects.requireNonNull(resewn.plan().sources().get("1C"))
                        .from()
                        .piece()
                        .id())
                .isEqualTo("5");
        assertThat(Objects.requireNonNull(resewn.plan().sources().get("hearth"))
                        .from()
                        .piece()
                        .id())
                .isEqualTo("2");
    }

    private static List<String> english(List<Sentence> told) {
        return told.stream().map(Sentence::english).toList();
    }
}
