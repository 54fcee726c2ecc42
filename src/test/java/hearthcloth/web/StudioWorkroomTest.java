package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.RunningWorkroom;
import hearthcloth.TestServer;
import hearthcloth.measure.Size;
import hearthcloth.stash.Piece;
import hearthcloth.store.Person;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.store.studio.Studio;
import hearthcloth.store.studio.StudioAddress;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Two workrooms, each a program of its own, before one PostgreSQL database, with a teacher and a maker. */
class StudioWorkroomTest {

    private static final String TEACHERS = "kelp and plum by lamplight";
    private static final String MAKERS = "nine buttons in a jar";

    private final String address = TestServer.freshDatabase();

    private RunningWorkroom workroom() {
        return RunningWorkroom.opened("--data", address);
    }

    private static void entered(RunningWorkroom room, String name, String passphrase) throws IOException {
        HttpResponse<String> in = room.post("/enter", room.token("/enter"), "name", name, "passphrase", passphrase);
        assertThat(in.statusCode()).as(in.body()).isEqualTo(303);
        assertThat(in.headers().firstValue("Location").orElse("")).endsWith("/");
    }

    private static String onward(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return response.headers().firstValue("Location").orElse("").replaceFirst("[?&]said=.*", "");
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher.group(1);
    }

    @Test
    void a_teachers_cloth_is_followed_by_a_maker_in_another_workroom_with_her_own_stash() throws IOException {
        try (RunningWorkroom ones = workroom();
                RunningWorkroom others = workroom()) {
            entered(ones, "Ada", TEACHERS);
            String token = ones.token("/gift");
            onward(ones.post("/example", token));
            String cloth = found("href=\"/cloth/(ex\\w+)\"", ones.see("/cloths").body());
            onward(ones.post("/people", token, "name", "Mo", "passphrase", MAKERS, "part", "maker"));
            onward(ones.post("/guidelines", token, "cloth", cloth));

            entered(others, "mo", MAKERS);
            String hers = others.token("/gift");
            assertThat(others.see("/cloths").body()).doesNotContain(cloth);
            onward(others.post("/stash/line", hers, "line", """
                6 plum linen 18 x 40 in
                6 straw linen 18 x 40 in
                4 sea linen 20 x 44 in
                """));
            String guidelines = others.see("/guidelines").body();
            assertThat(guidelines).contains("from Ada").doesNotContain("Hand a cloth to everybody");
            String guideline = found("/guidelines/([0-9a-f-]+)/follow", guidelines);
            String own = onward(others.post("/guidelines/" + guideline + "/follow", hers));

            assertThat(others.see(own).body()).contains("after Ada").doesNotContain("does not suffice");
            assertThat(ones.see(own).statusCode()).isEqualTo(404);
            try (Studio studio = studio()) {
                Store mo = work(studio, "Mo");
                SavedCloth followed = mo.cloths().all().get(0);
                SavedCloth taught = work(studio, "Ada").cloths().find(cloth).orElseThrow();
                assertThat(followed.document().design().layout())
                        .isEqualTo(taught.document().design().layout());
                assertThat(followed.document().plan())
                        .hasValueSatisfying(plan -> assertThat(plan.cuts())
                                .allSatisfy(cut ->
                                        assertThat(mo.stash().whole().pieces()).contains(cut.piece())));
            }
        }
    }

    private Studio studio() {
        return Studio.open(StudioAddress.parse(address, Optional.empty()), Clock.systemUTC());
    }

    private static Store work(Studio studio, String name) {
        Person person = studio.people().all().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        return studio.of(person);
    }

    @Test
    void one_person_writes_in_two_workrooms_and_what_was_acknowledged_outlives_one_of_them() throws Exception {
        Set<Integer> acknowledged = new ConcurrentSkipListSet<>();
        Semaphore firsts = new Semaphore(0);
        Semaphore seconds = new Semaphore(0);
        try (RunningWorkroom ones = workroom();
                RunningWorkroom others = workroom()) {
            entered(ones, "Ada", TEACHERS);
            others.with(ones);
            String token = ones.token("/gift");
            assertThat(others.token("/gift")).isEqualTo(token);
            Thread first = new Thread(() -> write(ones, token, 0, acknowledged, firsts), "first");
            Thread second = new Thread(() -> write(others, token, 1, acknowledged, seconds), "second");
            first.start();
            second.start();
            firsts.acquire(10);
            ones.kill();
            seconds.drainPermits();
            seconds.acquire(10);
            others.kill();
            first.join();
            second.join();
        }
        try (Studio studio = studio()) {
            List<Piece> all = work(studio, "Ada").stash().whole().pieces();
            assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(20);
            for (int change : acknowledged) {
                assertThat(all.stream().filter(piece -> piece.size().equals(size(change))))
                        .as("acknowledged change " + change)
                        .hasSize(2);
            }
            assertThat(all).hasSizeLessThanOrEqualTo(2 * acknowledged.size() + 4);
        }
    }

    private static Size size(int change) {
        return StashVisit.inches(1 + change % 50, 1 + change / 50);
    }

    /** Writes until no answer comes; where both write at once, the slower is asked to try again. */
    private static void write(
            RunningWorkroom room, String token, int from, Set<Integer> acknowledged, Semaphore answers) {
        try {
            for (int change = from; ; ) {
                String line = "2 oat linen " + (1 + change % 50) + " x " + (1 + change / 50) + " in";
                int status = room.post("/stash/line", token, "line", line).statusCode();
                if (status == 303) {
                    acknowledged.add(change);
                    answers.release();
                    change += 2;
                } else {
                    assertThat(status).isEqualTo(409);
                }
            }
        } catch (IOException e) {
            answers.release(100);
        }
    }

    @Test
    void nobody_sees_or_changes_anything_without_coming_in_and_a_maker_is_no_teacher() throws IOException {
        try (RunningWorkroom ones = workroom();
                RunningWorkroom strangers = workroom()) {
            entered(ones, "Ada", TEACHERS);
            String token = ones.token("/gift");
            onward(ones.post("/people", token, "name", "Mo", "passphrase", MAKERS, "part", "maker"));

            for (String path :
                    new String[] {"/gift", "/stash", "/cloths", "/archive", "/people", "/guidelines", "/copies"}) {
                assertThat(onward(strangers.see(path))).as(path).endsWith("/enter");
            }
            assertThat(strangers
                            .post("/stash/line", token, "line", "1 oat 4 x 4 in")
                            .statusCode())
                    .isEqualTo(403);
            HttpResponse<String> wrong = strangers.post(
                    "/enter", strangers.token("/enter"), "name", "Ada", "passphrase", "not the one at all");
            assertThat(wrong.statusCode()).isEqualTo(403);
            assertThat(wrong.body()).contains("Name or passphrase is wrong").doesNotContain("not the one at all");
            assertThat(wrong.headers().firstValue("Set-Cookie")).isEmpty();
            assertThat(strangers.heard())
                    .contains("postgresql://localhost")
                    .doesNotContain("not printed", "not%20printed");

            HttpResponse<String> in =
                    strangers.post("/enter", strangers.token("/enter"), "name", "Mo", "passphrase", MAKERS);
            assertThat(in.headers().firstValue("Set-Cookie").orElse(""))
                    .contains("HttpOnly", "SameSite=Strict", "Path=/");
            String hers = strangers.token("/gift");
            assertThat(hers).isNotEqualTo(token);
            assertThat(strangers
                            .post("/stash/line", token, "line", "1 oat 4 x 4 in")
                            .statusCode())
                    .isEqualTo(403);
            for (String deed : new String[] {"/people", "/people/1/passphrase"}) {
                assertThat(strangers
                                .post(deed, hers, "name", "Eve", "passphrase", MAKERS + "s")
                                .statusCode())
                        .as(deed)
                        .isEqualTo(409);
            }
            onward(strangers.post("/leave", hers));
            assertThat(onward(strangers.see("/gift"))).endsWith("/enter");
            assertThat(ones.see("/gift").statusCode()).isEqualTo(200);
        }
    }
}
