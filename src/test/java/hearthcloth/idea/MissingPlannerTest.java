package hearthcloth.idea;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** {@link MissingPlannerException} names a mend that is there to be run. */
class MissingPlannerTest {

    @Test
    void what_is_said_to_be_run_is_a_script_of_this_project() {
        String said = String.valueOf(new MissingPlannerException().getMessage());

        assertThat(said).contains("run ideapage/build").endsWith(".");
        assertThat(Files.isExecutable(Path.of("ideapage/build"))).isTrue();
    }
}
