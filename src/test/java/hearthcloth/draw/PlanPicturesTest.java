package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.MatPicture;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.PinnedPicture;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.guide.Cover;
import hearthcloth.draw.guide.Flow;
import hearthcloth.draw.guide.SeamCards;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Drawings of a plan that stand beside words: {@link HemPicture}, {@link SeamPicture}, {@link PinnedPicture}, {@link MatPicture}; and the {@link Cover} and {@link SeamCards} of a guide. */
class PlanPicturesTest {

    private static final Voice INCHES = Voice.english(Ruler.EIGHTHS);

    private static Stream<Point> points(Mark mark) {
        if (mark instanceof Mark.Area area) {
            return area.outline().stream();
        }
        if (mark instanceof Mark.Line line) {
            return line.points().stream();
        }
        return Stream.empty();
    }

    private static void liesWithin(Picture picture) {
        assertThat(picture.marks().stream().flatMap(PlanPicturesTest::points))
                .isNotEmpty()
                .allSatisfy(at -> {
                    assertThat(at.x()).isBetween(-1.0, picture.width() + 1);
                    assertThat(at.y()).isBetween(-1.0, picture.height() + 1);
                });
    }

    private static String words(Picture picture) {
        return String.join("\n", picture.words().stream().map(Mark.Words::text).toList());
    }

    private static Plan hemmed(Length first, Length second) {
        Plan plan = Samples.small();
        Cloth cloth = new Cloth(
                plan.cloth().work(), plan.cloth().making().withHem(new Hem(first, second, Hem.Corner.MITRED)));
        return new Plan(plan.story(), cloth, plan.rules(), plan.cuts(), plan.bound());
    }

    @Test
    void a_hem_s_corner_is_drawn_at_its_size_where_the_page_holds_it_and_else_told() {
        Picture usual = new HemPicture(Samples.small(), INCHES).block(170);
        Picture deep = new HemPicture(hemmed(Length.inches(1), Length.inches(2)), INCHES).block(170);

        assertThat(usual.width()).isEqualTo(170);
        liesWithin(usual);
        long lines = usual.marks().stream().filter(Mark.Line.class::isInstance).count();
        assertThat(deep.marks().stream().filter(Mark.Line.class::isInstance).count())
                .isLessThan(lines);
        assertThat(words(deep)).isNotBlank();
        // on a screen nobody knows how large a millimetre is
        assertThat(words(new HemPicture(Samples.small(), INCHES).onScreen(170))).isNotEqualTo(words(usual));
    }

    @Test
    void a_felled_seam_is_drawn_in_three_states_across_or_upright_and_another_is_not() {
        Picture across = SeamPicture.of(Samples.small(), INCHES).orElseThrow();
        Picture upright = SeamPicture.upright(Samples.small(), INCHES).orElseThrow();
        liesWithin(across);
        liesWithin(upright);
        assertThat(across.width()).isGreaterThan(across.height());
        assertThat(upright.width()).isLessThan(across.width());
        assertThat(words(upright)).isEqualTo(words(across));

        Plan plan = Samples.small();
        Cloth lapped = new Cloth(
                plan.cloth().work(),
                plan.cloth().making().withSeam(SeamKind.named("lapped").orElseThrow()));
        assertThat(SeamPicture.of(new Plan(plan.story(), lapped, plan.rules(), plan.cuts(), plan.bound()), INCHES))
                .isEmpty();
    }

    @Test
    void a_pinned_seam_is_as_wide_as_it_is_asked_for() {
        for (double width : new double[] {120, 170}) {
            Picture pinned = PinnedPicture.of(Samples.small(), INCHES, width);
            assertThat(pinned.width()).isEqualTo(width);
            liesWithin(pinned);
        }
    }

    @Test
    void a_piece_on_the_mat_fits_where_it_is_drawn_whatever_is_cut_already() {
        Plan plan = Samples.small();
        for (PieceTask task : Guide.of(plan, Ruler.EIGHTHS).cutting()) {
            int cuts = task.cut().tree().cuts().size();
            for (int made : new int[] {0, 1, cuts}) {
                Picture mat = new MatPicture(plan, task, INCHES, made).within(200, 140);
                assertThat(mat.width()).isLessThanOrEqualTo(200.01);
                assertThat(mat.height()).isLessThanOrEqualTo(140.01);
                assertThat(mat.marks()).isNotEmpty();
            }
            assertThat(new MatPicture(plan, task, INCHES, 0).within(200, 140).marks())
                    .isNotEqualTo(new MatPicture(plan, task, INCHES, cuts)
                            .within(200, 140)
                            .marks());
        }
    }

    private static Flow flow() {
        return new Flow(Paper.A4, "running", Voice.english(Ruler.EIGHTHS).printing());
    }

    @Test
    void a_guide_s_cover_names_the_cloth_its_size_and_its_fabrics() {
        Plan plan = Samples.small();
        Flow flow = flow();

        new Cover(plan, Guide.of(plan, Ruler.EIGHTHS), INCHES, flow).flow();

        String first = words(flow.pages().get(0));
        assertThat(first).contains("Oat", "Kelp");
        assertThat(flow.pages()).allSatisfy(page -> assertThat(page.width()).isEqualTo(Paper.A4.width()));
    }

    @Test
    void every_seam_has_its_card_in_sewing_order() {
        Plan plan = Samples.small();
        Guide guide = Guide.of(plan, Ruler.EIGHTHS);
        Flow flow = flow();

        new SeamCards(plan, INCHES, flow).flow(guide.sewing().seams());

        String all = String.join(
                "\n", flow.pages().stream().map(PlanPicturesTest::words).toList());
        List<String> titles =
                guide.sewing().seams().stream().map(seam -> seam.task().title()).toList();
        assertThat(titles).hasSize(plan.cloth().steps().size());
        assertThat(all.replace("\n", " ")).containsSubsequence(titles);
    }
}
