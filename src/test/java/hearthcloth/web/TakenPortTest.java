package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.store.json.StoreException;
import hearthcloth.web.door.Openness;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A port that another program holds keeps nobody out. */
class TakenPortTest {

    private final Path file;

    TakenPortTest(@TempDir Path folder) {
        file = folder.resolve("work.db");
    }

    private static ServerSocket holding(int port) throws IOException {
        return new ServerSocket(port, 1, InetAddress.getLoopbackAddress());
    }

    @Test
    void the_next_free_port_is_taken() throws IOException {
        try (ServerSocket taken = holding(0);
                Workroom room = Workroom.open(file, taken.getLocalPort(), Clock.systemUTC(), Openness.HERE)) {
            assertThat(room.port()).isBetween(taken.getLocalPort() + 1, taken.getLocalPort() + 20);
            assertThat(new Visit(room).page("/gift")).contains("Hearthcloth");
        }
    }

    @Test
    void where_none_is_free_it_is_said_in_words() throws IOException {
        List<ServerSocket> held = new ArrayList<>();
        try {
            for (int port = 65_520; port <= 65_535; port++) {
                try {
                    held.add(holding(port));
                } catch (IOException e) {
                    // Held by somebody else, which is as good.
                }
            }
            assertThatThrownBy(() -> Workroom.open(file, 65_520, Clock.systemUTC(), Openness.HERE))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("choose another with --port");
        } finally {
            for (ServerSocket each : held) {
                each.close();
            }
        }
    }
}
