package hearthcloth.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.BegunWork;
import hearthcloth.web.Visit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cloth keeps the ruler and the paper it was planned for, whatever she measures with later. */
class OwnRulerTest {

    @TempDir
    Path folder;

    private Visit visit;
    private String cloth = "";
    private String cut = "";

    @BeforeEach
    void open() {
        cloth = BegunWork.exampleTaken(folder);
        visit = new Visit(folder);
        cut = cloth.replace("/cloth/", "/cut/");
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private List<String> cuts() {
        return CutPageTest.all(
                "<strong><span class=\"sr\">\\d+: </span>([^<]+)</strong>", visit.page(cut + "?piece=0"));
    }

    private String plan() {
        return visit.page(cloth.replace("/cloth/", "/cloths/") + "/plan.json");
    }

    @Test
    void another_unit_changes_nothing_of_a_cloth_that_is_half_cut() {
        String piece = CutPageTest.all("name=\"cut\" value=\"([^\"]+)\"", visit.page(cut + "?piece=0"))
                .get(0);
        visit.post(cut + "/tick", "cut", piece, "on", "yes");
        List<String> inches = cuts();
        String before = plan();
        assertThat(inches).isNotEmpty().allMatch(line -> line.endsWith(" in"));

        visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");

        assertThat(cuts()).isEqualTo(inches);
        assertThat(plan()).isEqualTo(before);
        assertThat(visit.page(cloth)).contains("This cloth is measured in inches, as it is cut.");
    }

    @Test
    void a_cloth_of_which_nothing_is_cut_is_planned_again_to_the_marks_of_the_new_ruler_or_stays() {
        visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
        assertThat(visit.page(cloth)).contains("This cloth is measured in inches, as it was planned.");
        visit.post(cloth + "/replan");
        // Where the fabric does not suffice for cuts to the new marks, it stays as it was and says so.
        String unit = visit.page(cloth).contains("This cloth is measured in inches") ? " in" : " cm";
        assertThat(cuts()).isNotEmpty().allMatch(line -> line.endsWith(unit));
    }
}
