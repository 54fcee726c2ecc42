package hearthcloth.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import hearthcloth.photo.scene.Photographs;
import hearthcloth.web.make.CutPageTest;
import hearthcloth.words.Language;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page with nothing, a little and very much in the stash, all its folds open: axe finds nothing, and nothing sticks
 * out of the window. With {@code -Dlook=true} each is also drawn at every size in both themes, for the eye, into {@code
 * target/pictures/pages}.
 */
class EveryPageTest {

    private static final boolean LOOK = Boolean.getBoolean("look");
    private static final Path PICTURES = Path.of("target", "pictures", "pages");
    private static final String OPEN_FOLDS = "() => document.querySelectorAll('details').forEach(d => d.open = true)";

    /** How a page is looked at. */
    private record Eye(String name, Browser.Screen screen, ColorScheme scheme) {}

    private static final List<Eye> ALL = Stream.of(ColorScheme.LIGHT, ColorScheme.DARK)
            .flatMap(scheme -> Stream.of(
                    new Eye("phone", Browser.Screen.PHONE, scheme),
                    new Eye("tablet", Browser.Screen.TABLET, scheme),
                    new Eye("desk", Browser.Screen.DESK, scheme)))
            .toList();

    private static final List<Eye> ENDS = List.of(
            new Eye("phone", Browser.Screen.PHONE, ColorScheme.LIGHT),
            new Eye("desk", Browser.Screen.DESK, ColorScheme.DARK));

    private static final List<Eye> EXTREMES = List.of(
            new Eye("phone", Browser.Screen.PHONE, ColorScheme.DARK),
            new Eye("zoomed", Browser.Screen.ZOOMED, ColorScheme.LIGHT),
            new Eye("wall", Browser.Screen.WALL, ColorScheme.DARK));

    @TempDir
    Path folder;

    @Test
    void with_nothing_in_the_stash() {
        try (Browser browser = new Browser(folder)) {
            look(
                    browser,
                    "empty",
                    ENDS,
                    "/gift",
                    "/stash",
                    "/stash/ways",
                    "/stash/photo",
                    "/cloth",
                    "/cut",
                    "/tie",
                    "/cloths",
                    "/settings",
                    "/nothing");
        }
    }

    @Test
    void with_a_little_in_the_stash() {
        try (Browser browser = new Browser(folder)) {
            Visit visit = browser.visit();
            visit.post("/settings", "ruler", "EIGHTHS", "paper", "letter");
            visit.post("/example");
            String one = taken(visit);
            // Copies, since what the first one takes may leave too little for another.
            String other = copied(visit, one);
            String short1 = copied(visit, one);
            visit.post("/cloth/" + short1 + "/change", "what", "hearth", "width", "70", "height", "70");
            visit.post("/made/" + one + "/slip", "width", "30", "height", "30", "corner", "42", "corner2", "43");
            visit.post("/made/" + one + "/used", "day", "4 May", "what", "a pot of honey", "who", "Ines");
            String stash = visit.page("/stash");
            String piece = "/stash/piece/" + found("name=\"piece\" value=\"([^\":]+):", stash);
            String fabric = found("href=\"(/stash/fabric[^\"]+)\"", stash);
            look(
                    browser,
                    "small",
                    EXTREMES,
                    "/gift?kind=box&a=12&b=9&c=4&size=30",
                    "/gift?kind=roll&a=3&b=wide",
                    "/stash",
                    piece,
                    fabric,
                    "/cloth",
                    "/cloth/" + one,
                    "/cloth/" + one + "?at=1A",
                    "/cloth/" + one + "?at=hearth",
                    "/cloth/" + one + "?look=tied",
                    "/cloth/" + one + "?look=tied&gift=box+90+x+90+x+90+in",
                    "/made/" + one,
                    "/cloth/" + short1,
                    "/cut",
                    "/cut/" + one,
                    "/sew",
                    "/sew/" + one + "?step=0",
                    "/sew/" + one + "?step=1",
                    "/sew/" + one + "?step=4",
                    "/sew/" + one + "?step=99",
                    "/cloths",
                    "/cloths/compare?c=" + one + "&c=" + other,
                    "/tied/" + one,
                    "/copies",
                    "/devices",
                    "/kits",
                    "/piecing",
                    "/piecing?at=ex7",
                    "/piecing?at=ex7&to=ex5",
                    "/class",
                    "/settings");
        }
    }

    @Test
    void with_photographs_of_scraps() {
        try (Browser browser = new Browser(folder)) {
            Visit visit = browser.visit();
            visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
            String few = sent(visit, TestPhotographs.few(), "a4");
            String many = sent(visit, Photographs.drawn(2301, 40, 4), "a4");
            String none = sent(visit, TestPhotographs.withoutSheet(), "a4");
            String doubtful = found("class=\"piece look\" data-piece=\"(\\w+)\"", visit.page(few));
            assertThat(visit.page(none)).contains("No A4 was found");
            visit.post(few + "/change", "what", "drop", "piece", "1");
            look(
                    browser,
                    "photograph",
                    EXTREMES,
                    "/stash",
                    "/stash/photo",
                    few,
                    few + "?piece=2",
                    few + "?piece=" + doubtful,
                    few + "?piece=" + doubtful + "&do=split",
                    few + "?piece=2&do=grain",
                    few + "?do=draw",
                    many,
                    many + "?piece=7",
                    none);
        }
    }

    /** The page of a photograph that was sent and read. */
    private static String sent(Visit visit, byte[] photograph, String sheet) {
        return visit.untilRead(Visit.onward(visit.send("/stash/photo", "picture", photograph, "sheet", sheet)));
    }

    /** On the phone, where room is scarcest: every page in German, whose words are longest, and in one more by turns. */
    @Test
    void in_the_other_languages() {
        Language[] others = {Language.KOREAN, Language.JAPANESE, Language.FRENCH, Language.SPANISH};
        inLanguages(
                List.of(EXTREMES.get(0)),
                (language, i) -> LOOK || language == Language.GERMAN || others[i % others.length] == language);
    }

    /** The whole workroom in every language, at every size. */
    @Tag("long")
    @Test
    void in_every_language_at_every_size() {
        inLanguages(ALL, (language, i) -> true);
    }

    private void inLanguages(List<Eye> eyes, BiPredicate<Language, Integer> chosen) {
        try (Browser browser = new Browser(folder)) {
            Visit visit = browser.visit();
            visit.post("/example");
            String one = taken(visit);
            String other = copied(visit, one);
            visit.post("/made/" + one + "/slip", "width", "30", "height", "30", "corner", "42", "corner2", "43");
            List<String> paths = List.of(
                    "/",
                    "/gift?kind=box&a=30&b=20&c=10.5&size=80",
                    "/stash",
                    "/stash/ways",
                    "/stash/photo",
                    "/cloth",
                    "/cloth/" + one + "?at=1A",
                    "/cloth/" + one + "?look=tied",
                    "/cut/" + one,
                    "/sew/" + one + "?step=1",
                    "/sew/" + one + "?step=99",
                    "/tied/" + one,
                    "/made/" + one,
                    "/cloths",
                    "/cloths/compare?c=" + one + "&c=" + other,
                    "/kits",
                    "/class",
                    "/copies",
                    "/devices",
                    "/settings",
                    "/nothing");
            for (Language language : Language.values()) {
                List<String> some = IntStream.range(0, paths.size())
                        .filter(i -> chosen.test(language, i))
                        .mapToObj(paths::get)
                        .toList();
                if (!some.isEmpty()) {
                    visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4", "language", language.tag());
                    look(browser, language.tag(), eyes, some.toArray(String[]::new));
                }
            }
        }
    }

    @Test
    void with_ten_thousand_pieces_in_the_stash() {
        try (Browser browser = new Browser(folder)) {
            Visit visit = browser.visit();
            visit.post("/settings", "ruler", "MILLIMETRES", "paper", "a4");
            visit.post("/stash/line", "line", tenThousand());
            assertThat(visit.page("/stash")).contains("10000 pieces");
            visit.post("/gift", "size", "90");
            String cloth = taken(visit);
            look(
                    browser,
                    "huge",
                    ENDS,
                    "/stash",
                    "/stash?page=7",
                    "/cloth",
                    "/cloth/" + cloth + "?at=1A",
                    "/cut/" + cloth);
        }
    }

    /** Lines of five pieces each, of sixty fabrics, one with a very long name. */
    private static String tenThousand() {
        Random random = new Random(11);
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < 2000; i++) {
            int fabric = random.nextInt(60);
            lines.append("5 ")
                    .append(fabric == 0 ? "grandmother's summer curtain from the blue kitchen by the" : "bolt")
                    .append(" no" + fabric)
                    .append(' ')
                    .append(4 + random.nextInt(30))
                    .append(" x ")
                    .append(10 + random.nextInt(100))
                    .append(" cm\n");
        }
        return lines.toString();
    }

    /** The id of a cloth made from the first proposal there is. */
    private static String taken(Visit visit) {
        return CutPageTest.taken(visit).replaceFirst(".*/cloth/", "");
    }

    private static String copied(Visit visit, String cloth) {
        return Visit.onward(visit.post("/cloth/" + cloth + "/copy")).replaceFirst(".*/cloth/", "");
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    /** Every page once through axe, by one eye after the other, and then with its window drawn in to the narrowest. */
    private static void look(Browser browser, String heap, List<Eye> eyes, String... paths) {
        for (int e = 0; e < (LOOK ? ALL : eyes).size(); e++) {
            Eye eye = (LOOK ? ALL : eyes).get(e);
            Page page = browser.window(eye.screen(), eye.scheme());
            for (int i = 0; i < paths.length; i++) {
                String what = heap + " " + paths[i] + " " + eye.name() + " " + eye.scheme();
                if (LOOK) {
                    page.navigate(paths[i]);
                    drawn(page, heap + "-" + i + "-" + eye.name() + "-" + eye.scheme());
                } else if (i % eyes.size() == e) {
                    page.navigate(paths[i]);
                    page.evaluate(OPEN_FOLDS);
                    Browser.assertFit(page, what);
                    Browser.resized(page, Browser.Screen.NARROW);
                    Browser.assertNothingSticksOut(page, what + ", drawn in to the narrowest window");
                    page.setViewportSize(eye.screen().width(), eye.screen().height());
                }
            }
            page.context().close();
        }
        browser.assertQuiet();
    }

    private static void drawn(Page page, String name) {
        page.waitForLoadState(LoadState.NETWORKIDLE);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + ".png"))
                .setFullPage(true));
    }
}
