package hearthcloth.guideline.file;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineCheck;
import hearthcloth.guideline.SentCloth;
import hearthcloth.guideline.Taken;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.wish.Door;
import hearthcloth.wish.Usual;
import hearthcloth.wish.WishReader;
import hearthcloth.wish.WishWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cloth sent as its plan file is the same cloth again, and a guideline taken from it is kept by it. */
class PlanReaderTest {

    private static List<Plan> plans() {
        var stash = Stashes.scraps(20, 3);
        var wish = new WishReader(WishWords.NOTHING, stash, Usual.of(Ruler.EIGHTHS), Door.SHELL).wish(Optional.empty());
        return ((PlanOutcome.Proposals) Planner.plan(stash, wish, 1, Budget.steps(200), seen -> {})).plans();
    }

    private static String file(Plan plan) {
        return new PlanFolder(plan, Ruler.EIGHTHS, Paper.A4).planFile();
    }

    @Test
    void a_cloth_is_the_same_after_its_way_through_the_file() {
        for (Plan plan : plans()) {
            SentCloth sent = ((PlanReader.Reading.Read) PlanReader.read(file(plan))).cloth();
            assertThat(sent.cloth()).isEqualTo(plan.cloth());
            assertThat(sent.rules()).isEqualTo(plan.rules());
            assertThat(sent.fabrics()).containsExactlyInAnyOrderElementsOf(plan.fabrics());
        }
    }

    @Test
    void the_cloth_itself_keeps_what_is_taken_from_it() {
        for (Plan plan : plans()) {
            SentCloth sent = ((PlanReader.Reading.Read) PlanReader.read(file(plan))).cloth();
            Guideline.Told told = new Guideline.Told("Idea", "", "", Optional.empty(), Ruler.EIGHTHS);
            for (String said : List.of("kept", "share")) {
                Taken taken = new Taken(sent, told);
                Guideline guideline = new Guideline(
                        told,
                        taken.size("kept"),
                        new Guideline.ShapeRule(
                                taken.hearth(said), taken.bars(said), taken.rounds("kept"), taken.order("kept")),
                        taken.colours("kept", "any"),
                        taken.sewing(Optional.empty()));
                assertThat(new GuidelineCheck(GuidelineFileTest.read(GuidelineFile.write(guideline)))
                                .bends(plan.cloth(), plan.fabrics(), Optional.empty()))
                        .filteredOn(bend -> bend.rule() != Bend.Rule.BARS)
                        .isEmpty();
            }
        }
    }

    @Test
    void a_file_that_is_no_plan_is_refused_in_words() {
        String good = file(plans().get(0));
        for (String wrong : List.of(
                "{}",
                good.replace("hearthcloth-plan", "other"),
                good.replace("\"role\" : \"hearth\"", "\"role\" : \"bar\""),
                good.replace("\"side\" : \"right\"", "\"side\" : \"up\""),
                good.replace("\"narrow\" : 6350000", "\"narrow\" : -1"),
                good.replaceFirst("\"width\" : \\d+", "\"width\" : 1"))) {
            PlanReader.Reading reading = PlanReader.read(wrong);
            if (reading instanceof PlanReader.Reading.Faulty faulty) {
                assertThat(faulty.said())
                        .isNotEmpty()
                        .allMatch(line -> line.english().endsWith("."));
            } else {
                assertThat(wrong).isNotEqualTo(good);
            }
        }
        assertThat(PlanReader.read("{}")).isInstanceOf(PlanReader.Reading.Faulty.class);
    }
}
