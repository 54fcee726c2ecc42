package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.RunningWorkroom;
import hearthcloth.TestServer;
import hearthcloth.store.Person;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A class in a studio: a teacher begins it, students come in by its code alone, and nothing of theirs is kept. */
class StudioClassTest {

    private static final String TEACHERS = "kelp and plum by lamplight";
    private static final String MAKERS = "nine buttons in a jar";
    private static final String IDEA = """
            {"format":"hearthcloth-guideline","version":1,"name":"Ring by ring","hearth":"25 to 45 %"}""";
    private static final String HEAP =
            "6 x 9 in, rust linen\n5 x 20 in, 3 of them, oat linen\n4 x 22 in, 4 of them, slate check";

    private final String address = TestServer.freshDatabase();

    private RunningWorkroom workroom() {
        return RunningWorkroom.opened("--data", address);
    }

    private static void entered(RunningWorkroom room, String name, String passphrase) throws IOException {
        HttpResponse<String> in = room.post("/enter", room.token("/enter"), "name", name, "passphrase", passphrase);
        assertThat(in.statusCode()).as(in.body()).isEqualTo(303);
    }

    private static String begun(RunningWorkroom room, String token) throws IOException {
        assertThat(room.send("/class", token, "file", IDEA.getBytes(StandardCharsets.UTF_8))
                        .statusCode())
                .isEqualTo(303);
        Matcher code = Pattern.compile("big code\">([A-Z0-9]+)<")
                .matcher(room.see("/class").body());
        assertThat(code.find()).isTrue();
        return code.group(1);
    }

    private static Pupil pupil(RunningWorkroom room) {
        return new Pupil("http://localhost:" + room.port());
    }

    private static String onward(HttpResponse<String> response) {
        return response.headers().firstValue("Location").orElse("");
    }

    @Test
    void students_of_a_teacher_need_no_passphrase_and_see_her_class_alone() throws Exception {
        try (RunningWorkroom teachers = workroom()) {
            entered(teachers, "Ada", TEACHERS);
            String token = teachers.token("/gift");
            String code = begun(teachers, token);
            Pupil anna = pupil(teachers);
            assertThat(onward(anna.see("/class/mine"))).endsWith("/class/in");
            assertThat(anna.comes(code, "Anna")).endsWith("/class/mine");
            for (String path : List.of("/", "/stash", "/class", "/cloths", "/people", "/guidelines")) {
                HttpResponse<String> seen = anna.see(path);
                assertThat(seen.statusCode()).as(path).isEqualTo(303);
                assertThat(onward(seen)).as(path).contains("/enter");
            }
            assertThat(anna.posted("/class/end", token).statusCode()).isNotEqualTo(200);
            assertThat(anna.planned(HEAP)).contains("seams sewn");
            anna.post("/class/mine/show", "on", "yes");
            anna.post("/class/mine/sewn", "more", "yes");
            assertThat(teachers.see("/class").body()).contains("Anna", "class=\"hung\"", "1 of ");
            assertThat(teachers.post("/class/end", token).statusCode()).isEqualTo(303);
            assertThat(onward(anna.see("/class/mine"))).endsWith("/class/in");
        }
        nothingIsKeptBut("Ada");
    }

    /** One person and an empty stash: what a student typed was never anybody's. */
    private void nothingIsKeptBut(String teacher) {
        try (Studio studio = Studio.open(StudioAddress.parse(address, Optional.empty()), Clock.systemUTC())) {
            List<Person> people = studio.people().all();
            assertThat(people).extracting(Person::name).containsExactly(teacher);
            assertThat(studio.of(people.get(0)).stash().whole().pieces()).isEmpty();
            assertThat(studio.of(people.get(0)).cloths().all()).isEmpty();
        }
    }

    @Test
    void a_maker_has_no_class_and_cannot_end_one() throws Exception {
        try (RunningWorkroom teachers = workroom();
                RunningWorkroom makers = workroom()) {
            entered(teachers, "Ada", TEACHERS);
            String token = teachers.token("/gift");
            teachers.post("/people", token, "name", "Mo", "passphrase", MAKERS, "part", "maker");
            entered(makers, "Mo", MAKERS);
            String hers = makers.token("/gift");
            HttpResponse<String> seen = makers.see("/class");
            assertThat(seen.body()).contains("Only a teacher does this.").doesNotContain("big code");
            HttpResponse<String> sent = makers.send("/class", hers, "file", IDEA.getBytes(StandardCharsets.UTF_8));
            assertThat(sent.body()).contains("Only a teacher does this.");
            assertThat(makers.post("/class/end", hers).body()).contains("Only a teacher does this.");
        }
    }
}
