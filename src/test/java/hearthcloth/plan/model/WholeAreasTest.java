package hearthcloth.plan.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.work.Worked;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link WholeAreas}: each area of fabric is counted once, however often what was left was cut again. */
class WholeAreasTest {

    private static Plan with(List<PieceCut> cuts) {
        Plan plan = Worked.PLAN;
        return new Plan(plan.story(), plan.cloth(), plan.rules(), cuts, plan.bound());
    }

    private static PlanFigures.Areas areas(List<PieceCut> cuts) {
        return new WholeAreas(with(cuts)).areas();
    }

    private static double sum(PlanFigures.Areas areas) {
        return areas.used() + areas.lost() + areas.offcuts();
    }

    /** A piece that leaves something worth keeping, and that. */
    private static PieceCut leaving() {
        return Worked.PLAN.cuts().stream()
                .filter(cut -> cut.tree().left().stream()
                        .anyMatch(left -> CutTree.isReusable(
                                left.size(), Worked.PLAN.rules().leastPiece())))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_is_cut_into_is_what_is_used_lost_and_left() {
        PlanFigures.Areas areas = areas(Worked.PLAN.cuts());
        double pieces = Worked.PLAN.cuts().stream()
                .mapToDouble(cut -> cut.piece().areaMm2())
                .sum();
        assertThat(areas.touched()).isEqualTo(pieces, within(1e-6));
        assertThat(areas.used()).isEqualTo(Worked.patches(Worked.PLAN, false), within(1e-6));
        assertThat(sum(areas)).isEqualTo(areas.touched(), within(1e-3));
    }

    @Test
    void an_offcut_that_is_cut_again_is_no_further_piece_and_no_offcut_any_more() {
        PieceCut first = leaving();
        Rect left = first.tree().left().get(0);
        Piece again = first.piece().part(1_000, left.size());
        Rect whole = Rect.at(Length.ZERO, Length.ZERO, left.size());
        List<PieceCut> cuts = new ArrayList<>(Worked.PLAN.cuts());
        cuts.set(cuts.indexOf(first), first.asCut(first.tree()));
        PlanFigures.Areas before = areas(cuts);
        cuts.add(new PieceCut(again, new CutTree.Kept(whole, "anything", false)));
        PlanFigures.Areas after = areas(cuts);

        assertThat(after.touched()).isEqualTo(before.touched(), within(1e-6));
        assertThat(after.offcuts()).isEqualTo(before.offcuts() - again.areaMm2(), within(1e-3));
        assertThat(after.used()).isEqualTo(before.used() + again.areaMm2(), within(1e-3));
        assertThat(sum(after)).isEqualTo(after.touched(), within(1e-3));
    }

    @Test
    void what_a_bar_found_too_short_lacks_is_lost() {
        PieceCut first = leaving();
        Rect left = first.tree().left().get(0);
        Size shorter = new Size(left.size().width(), left.size().height().minus(Length.inches(1, 2)));
        Piece again = first.piece().part(1_000, shorter);
        List<PieceCut> cuts = new ArrayList<>(Worked.PLAN.cuts());
        cuts.set(cuts.indexOf(first), first.asCut(first.tree()));
        PlanFigures.Areas before = areas(cuts);
        cuts.add(new PieceCut(again, new CutTree.Left(Rect.at(Length.ZERO, Length.ZERO, shorter))));
        PlanFigures.Areas after = areas(cuts);
        assertThat(after.lost()).isEqualTo(before.lost() + left.size().areaMm2() - shorter.areaMm2(), within(1e-3));
        assertThat(after.touched()).isEqualTo(before.touched(), within(1e-6));
    }

    @Test
    void an_earlier_piece_of_the_same_size_is_a_piece_of_its_own() {
        PieceCut first = leaving();
        Rect left = first.tree().left().get(0);
        Piece other = new Piece("1", first.piece().fabric(), left.size(), Piece.Washed.UNKNOWN, 1);
        List<PieceCut> cuts = new ArrayList<>(Worked.PLAN.cuts());
        cuts.set(cuts.indexOf(first), first.asCut(first.tree()));
        PlanFigures.Areas before = areas(cuts);
        cuts.add(new PieceCut(other, new CutTree.Left(Rect.at(Length.ZERO, Length.ZERO, left.size()))));
        assertThat(areas(cuts).touched()).isEqualTo(before.touched() + other.areaMm2(), within(1e-3));
    }
}
