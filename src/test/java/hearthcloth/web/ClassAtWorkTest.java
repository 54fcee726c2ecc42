package hearthcloth.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import hearthcloth.web.door.Openness;
import hearthcloth.web.make.CutPageTest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class on a laptop: students come in from other devices by a code, plan, show, and are put out again. */
class ClassAtWorkTest {

    private static final String IDEA = """
            {"format":"hearthcloth-guideline","version":1,"name":"Ring <b>by</b> ring",
             "words":"Begin in the <script>alert(1)</script> middle.","hearth":"25 to 45 %"}""";

    private static final List<String> HEAPS = List.of(
            "6 x 9 in, rust linen\n5 x 20 in, 3 of them, oat linen\n4 x 22 in, 4 of them, slate check",
            "8 x 8 in, moss print\n3 x 24 in, 6 of them, oat linen\n4 x 18 in, 3 of them, rust linen",
            "5 x 5 in, white lawn\n3 x 12 in, 4 of them, slate check\n3 x 16 in, 4 of them, moss print",
            "7 x 10 in, plum silk\n4 x 16 in, 8 of them, oat linen",
            "9 x 12 in, indigo cotton\n5 x 24 in, 6 of them, white lawn");

    @TempDir
    Path folder;

    private Visit opened() {
        return new Visit(Workroom.open(folder.resolve("work.db"), 0, Clock.systemUTC(), Openness.NEAR));
    }

    /** Begins a class; its code. */
    private static String begun(Visit visit) {
        visit.send("/class", "file", IDEA.getBytes(StandardCharsets.UTF_8));
        return CutPageTest.all("big code\">([A-Z0-9]+)<", visit.page("/class")).get(0);
    }

    @Test
    void a_student_sees_the_class_alone_and_the_wall_what_she_shows() throws Exception {
        try (Visit visit = opened()) {
            Pupil anna = new Pupil(visit.nearAddress());
            assertThat(anna.see("/class/in").body()).contains("There is no class");
            String code = begun(visit);
            assertThat(anna.see("/class/mine").headers().firstValue("Location").orElse(""))
                    .endsWith("/class/in");
            assertThat(anna.comes("WRONG9", "Anna")).contains("That code is not right");
            assertThat(anna.comes(code.toLowerCase(Locale.ROOT), "Anna <i>")).endsWith("/class/mine");
            for (String path : List.of("/", "/gift", "/stash", "/class", "/devices", "/hand-on", "/cloths")) {
                assertThat(anna.see(path).headers().firstValue("Location").orElse(""))
                        .as(path)
                        .endsWith("/join");
            }
            assertThat(anna.posted("/class/end", visit.token()).statusCode()).isEqualTo(403);
            assertThat(anna.posted("/class/mine", visit.token(), "heap", "x").statusCode())
                    .isEqualTo(403);
            String page = anna.planned(HEAPS.get(0));
            assertThat(page)
                    .contains("seams sewn", "Begin in the &lt;script&gt;", "Ring &lt;b&gt;by&lt;/b&gt; ring")
                    .doesNotContain("<script>alert", "<i>", visit.token());
            assertThat(visit.page("/class"))
                    .contains("Anna &lt;i&gt;", "shows nothing yet")
                    .doesNotContain("class=\"hung\"");
            anna.post("/class/mine/show", "on", "yes");
            anna.post("/class/mine/sewn", "more", "yes");
            assertThat(visit.page("/class")).contains("class=\"hung\"", "1 of ");
            assertThat(anna.see("/class/mine/plan.json").body()).contains("hearthcloth-plan");
            assertThat(anna.see("/class/mine/guide.pdf").body()).startsWith("%PDF");
            anna.post("/class/mine/show", "on", "no");
            assertThat(visit.page("/class")).doesNotContain("class=\"hung\"");
        }
    }

    @Test
    void people_are_put_out_one_by_one_and_all_at_the_end() throws Exception {
        try (Visit visit = opened()) {
            String code = begun(visit);
            List<Pupil> all = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                Pupil pupil = new Pupil(visit.nearAddress());
                assertThat(pupil.comes(code, "Mia")).endsWith("/class/mine");
                all.add(pupil);
            }
            assertThat(visit.page("/class")).contains(">Mia<", ">Mia 2<", ">Mia 3<");
            String id = CutPageTest.all("/class/out/([0-9a-f]+)\"", visit.page("/class"))
                    .get(1);
            visit.post("/class/out/" + id);
            assertThat(visit.page("/class")).doesNotContain(">Mia 2<");
            assertThat(all.get(1).see("/class/mine").statusCode()).isEqualTo(303);
            assertThat(all.get(0).see("/class/mine").statusCode()).isEqualTo(200);
            visit.post("/class/end");
            for (Pupil pupil : all) {
                assertThat(pupil.see("/class/mine").statusCode()).isEqualTo(303);
                assertThat(pupil.comes(code, "Mia")).contains("There is no class");
            }
            assertThat(visit.page("/class")).contains("Begin the class");
        }
    }

    @Test
    void a_line_that_is_not_understood_is_named_and_kept() throws Exception {
        try (Visit visit = opened()) {
            Pupil pupil = new Pupil(visit.nearAddress());
            pupil.comes(begun(visit), "Bo");
            assertThat(pupil.planned("4 x 8 in, 12 of them, green print\nsome <b>old</b> curtain"))
                    .contains("Line 2: ", "some &lt;b&gt;old&lt;/b&gt; curtain");
        }
    }

    @Test
    void five_phones_fill_the_wall() {
        try (Browser browser = new Browser(opened())) {
            Page teacher = browser.window(Browser.Screen.DESK, ColorScheme.LIGHT);
            teacher.navigate("/class");
            Browser.assertFit(teacher, "before a class");
            teacher.locator("input[name=file]")
                    .setInputFiles(
                            new FilePayload("idea.json", "application/json", IDEA.getBytes(StandardCharsets.UTF_8)));
            teacher.locator("form:has(input[name=file]) button").click();
            String code = teacher.locator(".code").textContent();
            List<Page> phones = new ArrayList<>();
            for (int i = 0; i < HEAPS.size(); i++) {
                Page phone = browser.touched(Browser.Screen.PHONE, i % 2 == 0 ? ColorScheme.LIGHT : ColorScheme.DARK);
                phone.navigate(browser.visit().nearAddress() + "/class/in?code=" + code);
                Browser.assertFit(phone, "the way in");
                phone.fill("input[name=name]", "Phone " + (i + 1));
                phone.locator("button").click();
                phone.fill("textarea", HEAPS.get(i));
                phone.locator("form:has(textarea) button").click();
                phones.add(phone);
            }
            for (Page phone : phones) {
                assertThat(phone.locator(".mine .hung svg")).isVisible();
                Browser.assertFit(phone, "her cloth");
                phone.locator("button[name=on]").click();
                assertThat(phone.locator("button[name=on]")).hasAttribute("value", "no");
                phone.locator("button[name=more]").first().click();
            }
            assertThat(teacher.locator("#wall .hung svg")).hasCount(HEAPS.size());
            assertThat(teacher.locator("#wall")).containsText("1 of ");
            Browser.assertFit(teacher, "the wall");
            kept(teacher, "wall");
            kept(phones.get(1), "phone");
            Page dark = browser.window(Browser.Screen.TABLET, ColorScheme.DARK);
            dark.navigate("/class");
            Browser.assertFit(dark, "the wall in the dark");
            kept(dark, "wall-dark");
            teacher.onDialog(dialog -> dialog.accept());
            teacher.locator("form[action='/class/end'] button").click();
            assertThat(teacher.locator("main")).containsText("Begin the class");
            for (Page phone : phones) {
                phone.reload();
                assertThat(phone.locator("main")).containsText("There is no class");
            }
            browser.assertQuiet();
        }
    }

    private static void kept(Page page, String name) {
        String into = System.getProperty("keep.png", "");
        if (!into.isEmpty()) {
            page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(Path.of(into, name + ".png")));
        }
    }

    /** Eight at once; how long answers take is measured by the long run. */
    @Test
    void none_of_many_students_is_lost() throws Exception {
        assertThat(crowd(8)).hasSizeGreaterThan(8);
    }

    /** Thirty at once. Prints how long their requests took. */
    @Test
    @Tag("long")
    void thirty_students_wait_at_most_a_moment() throws Exception {
        List<Double> took = crowd(30);
        took.sort(null);
        double p95 = took.get((int) Math.ceil(took.size() * 0.95) - 1);
        System.out.printf(
                Locale.ROOT,
                "30 students, %d requests: median %.0f ms, p95 %.0f ms, longest %.0f ms%n",
                took.size(),
                took.get(took.size() / 2),
                p95,
                took.get(took.size() - 1));
        assertThat(p95).isLessThanOrEqualTo(300);
    }

    /** So many come in at once, plan, show and sew a seam; what each of their requests took. */
    private List<Double> crowd(int count) throws Exception {
        ExecutorService devices = Executors.newFixedThreadPool(count);
        try (Visit visit = opened()) {
            String code = begun(visit);
            List<Callable<Pupil>> visits = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                String heap = HEAPS.get(i % HEAPS.size());
                String name = "Student " + (i + 1);
                visits.add(() -> attended(new Pupil(visit.nearAddress()), code, name, heap));
            }
            List<Double> took = new ArrayList<>();
            for (Future<Pupil> one : devices.invokeAll(visits)) {
                took.addAll(one.get().tookMs());
            }
            String wall = visit.page("/class");
            assertThat(CutPageTest.all("(class=\"hung\")", wall)).hasSize(count);
            assertThat(CutPageTest.all("(>1 of \\d+ seams)|( 1 of \\d+ seams)", wall))
                    .hasSize(count);
            return took;
        } finally {
            devices.shutdownNow();
        }
    }

    private static Pupil attended(Pupil pupil, String code, String name, String heap) throws Exception {
        assertThat(pupil.comes(code, name)).endsWith("/class/mine");
        pupil.post("/class/mine", "heap", heap, "favourite", "", "unit", "in");
        HttpResponse<String> page = pupil.see("/class/mine");
        while (page.body().contains("http-equiv=\"refresh\"")) {
            Thread.sleep(2_000); // as the page itself waits before it asks again
            page = pupil.see("/class/mine");
        }
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(pupil.post("/class/mine/show", "on", "yes").statusCode()).isEqualTo(303);
        assertThat(pupil.post("/class/mine/sewn", "more", "yes").statusCode()).isEqualTo(303);
        return pupil;
    }
}
