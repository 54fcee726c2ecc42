package hearthcloth.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;

/** Where files arrive: closed to others, and taken away, after a kill too. */
class UploadFolderTest {

    @Test
    void it_is_its_owners_only_and_goes_when_it_is_closed() throws IOException {
        UploadFolder folder = UploadFolder.open();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.path())))
                .isEqualTo("rwx------");
        Files.writeString(folder.path().resolve("half a photograph"), "x");
        folder.close();
        assertThat(folder.path()).doesNotExist();
    }

    @Test
    void what_a_killed_workroom_left_goes_at_the_next_start_and_that_of_an_open_one_stays() throws IOException {
        Path left = Files.createTempDirectory("hearthcloth-arriving-");
        Files.writeString(left.resolve("lock"), "");
        Files.writeString(left.resolve("half a photograph"), "x");
        try (UploadFolder open = UploadFolder.open();
                UploadFolder another = UploadFolder.open()) {
            assertThat(left).doesNotExist();
            assertThat(open.path()).exists();
            assertThat(another.path()).exists();
        }
    }
}
