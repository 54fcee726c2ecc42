package hearthcloth.web.tie;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.web.Visit;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cloth stays with the gift it was planned for, whatever is planned next. */
class GiftKeptTest {

    @Test
    void the_next_gift_leaves_a_kept_cloth_with_its_own_until_she_says_otherwise(@TempDir Path folder) {
        try (Visit visit = new Visit(folder)) {
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/example");
            Matcher cloth = Pattern.compile("/cloth/(ex[\\w-]+)").matcher(visit.page("/cloth"));
            assertThat(cloth.find()).isTrue();
            String tied = "/tied/" + cloth.group(1);

            visit.post("/gift", "gift", "bottle 3 x 12", "tie", "");

            assertThat(visit.page("/gift")).contains("bottle");
            assertThat(visit.page(tied)).contains("box 12 x 9 x 4 in").doesNotContain("bottle 3");
            assertThat(visit.page("/cloth/" + cloth.group(1))).contains("12 × 9 × 4 in");

            visit.post(tied + "/keep", "gift", "ball 6", "tie", "");

            assertThat(visit.page(tied)).contains("ball 6 in").doesNotContain("box 12 x 9");
            visit.post("/cloth/" + cloth.group(1) + "/undo");
            assertThat(visit.page(tied)).contains("box 12 x 9 x 4 in");
            assertThat(visit.post(tied + "/keep", "gift", "a large thing", "tie", "")
                            .statusCode())
                    .isEqualTo(422);
        }
    }
}
