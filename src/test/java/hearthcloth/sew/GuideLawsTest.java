package hearthcloth.sew;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.RandomCloths;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Laws of the guide, over seeded random cloths of every seam and hem. */
class GuideLawsTest {

    private static final int MANY = 300;

    @Test
    void every_seam_is_told_in_the_cloth_s_own_order_and_numbers() {
        each(cloth -> {
            List<SeamTask> seams = SeamTasks.of(cloth, new MakerWords(Voice.english(Ruler.MILLIMETRES)));
            assertThat(seams).extracting(SeamTask::step).isEqualTo(cloth.steps());
            for (SeamTask seam : seams) {
                Size size = seam.task().check().orElseThrow().size();
                assertThat(size)
                        .isEqualTo(
                                seam.step().joinedBar().isPresent()
                                        ? joined(cloth, seam)
                                        : seam.step().running());
            }
        });
    }

    /** Cut lengths put end to end, less a seam at each join: by tape measure, not by the folds. */
    private static Size joined(Cloth cloth, SeamTask seam) {
        List<Patch> parts = new ArrayList<>(seam.step().patches(Half.FIRST));
        parts.addAll(seam.step().patches(Half.SECOND));
        List<Size> cut = cloth.laid().stream()
                .filter(laid -> parts.contains(laid.patch()))
                .map(Laid::cut)
                .toList();
        boolean sideways = seam.step().line().width().equals(Length.ZERO);
        Length along = cut.stream()
                .map(size -> sideways ? size.width() : size.height())
                .reduce(Length.ZERO, Length::plus)
                .minus(cloth.making().seam().loss().times(cut.size() - 1L));
        Length across = cut.stream()
                .map(size -> sideways ? size.height() : size.width())
                .reduce(Length.ZERO, Length::max);
        return sideways ? new Size(along, across) : new Size(across, along);
    }

    @Test
    void every_sentence_is_whole() {
        each(cloth -> {
            String text = GuideText.of(Guide.of(planned(cloth), Ruler.EIGHTHS));
            assertThat(text).doesNotContain("null", "block of step 0", "about 0 ", " ,", "  -  ", "−");
            for (String line : text.lines().toList()) {
                if (line.startsWith("  - ") || line.startsWith("  = The") || line.startsWith("  ! ")) {
                    assertThat(line).matches("(?s).*[.a-z0-9]");
                }
            }
        });
    }

    @Test
    void whoever_follows_the_cuts_blindly_has_every_patch_at_its_size() {
        each(cloth -> {
            Plan plan = planned(cloth);
            BlindCutter.cuts(plan, CuttingOut.of(plan, new MakerWords(Voice.english(Ruler.EIGHTHS))));
        });
    }

    private static Plan planned(Cloth cloth) {
        List<Fabric> fabrics = cloth.patches().stream()
                .map(Patch::fabric)
                .distinct()
                .map(name -> new Fabric(name, Colour.of(0x808080), Fabric.Faces.SAME, Fabric.Nap.ANY))
                .toList();
        return HandPlans.of(cloth, PiecingRules.inches(), fabrics, Piece.Washed.UNKNOWN);
    }

    /** Cloths whose cuts lie on marks of eighths, as a planner makes them. */
    private static void each(Consumer<Cloth> law) {
        for (int seed = 1; seed <= MANY; seed++) {
            Cloth cloth = RandomCloths.of(seed);
            if (!cloth.making().margins().mark().equals(Ruler.EIGHTHS.step())) {
                continue;
            }
            try {
                law.accept(cloth);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
    }
}
