package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Without a command the workroom opens, with the options given. */
class WorkroomCommandTest {

    @Test
    void no_command_opens_the_workroom_on_its_own_port() {
        assertThat(Typed.words().out()).contains("workroom at 4732, Optional.empty, true");
    }

    @Test
    void options_are_handed_on() {
        Typed typed = Typed.words("--port", "0", "--data", "my/work.db", "--no-browser");
        assertThat(typed.code()).isZero();
        assertThat(typed.out()).contains("workroom at 0, Optional[my/work.db], false, Optional.empty");
        assertThat(Typed.words("--restore", "last").out()).contains("Optional.empty, true, Optional[last]");
        assertThat(Typed.words("--data", "postgresql://ada@server/studio").out())
                .contains("Optional[postgresql://ada@server/studio]");
    }

    @Test
    void a_port_that_is_none_is_refused_in_words() {
        Typed.words("--port", "99999").refused("--port", "65535");
        Typed.words("--port", "kelp").refused("--port");
        Typed.words("--data", "a\u0000b").refused("--data", "not a file name");
    }
}
