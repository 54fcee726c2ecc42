package hearthcloth.draw;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Picture;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The guide in each language: every word on its page, none over another, and none left in English. */
class SixLanguagesTest {

    private static final Plan PLAN = Samples.small()
            .told(new Plan.Story(
                    PlanningSentences.title(PlanningSentences.order("ROUND"), PlanningSentences.scheme("HALVES")),
                    PlanningSentences.good(
                            Argument.capital(PlanningSentences.schemeIdea("HALVES")),
                            Argument.row(
                                    Joined.COMMAS, List.of(PlanningSentences.pointFewestJoins(Argument.number(2))))),
                    List.of(
                            PlanningSentences.chosenRounds(1),
                            PlanningSentences.chosenHearth(Argument.of(Length.cm(9), Rounding.UP))),
                    List.of(PlanningSentences.colourMixed(2))));

    /** A word of a sentence: four small letters or more. Names of fabrics are the maker's own. */
    private static final Pattern WORD = Pattern.compile("\\p{javaLowerCase}{4,}");

    private static final Pattern LATIN = Pattern.compile("[A-Za-z]{3,}");

    private static PlanSheets sheets(Language language, Ruler ruler) {
        Wrapped wrapped = new Wrapped(
                Gift.parse("box 11 x 8 x 4 cm", null),
                Tie.FOUR_CORNER,
                new Tail(Length.cm(6), Length.cm(6), Length.cm(6)),
                Placing.CENTRED);
        return new PlanSheets(PLAN, Voice.of(language, ruler), Paper.A4, Optional.of(wrapped));
    }

    private static List<Picture> pages(Language language, Ruler ruler) {
        PlanSheets sheets = sheets(language, ruler);
        Guide guide = Guide.of(PLAN, sheets.voice());
        List<Picture> pages = new ArrayList<>(GuidePages.forClass(sheets, guide));
        pages.addAll(GuidePages.of(sheets, guide, sheets.tied()));
        pages.addAll(GuidePages.slips(sheets));
        sheets.net().ifPresent(pages::add);
        return pages;
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void every_word_of_both_guides_and_the_slips_can_be_read(Language language) {
        List<Picture> pages = pages(language, language == Language.ENGLISH ? Ruler.EIGHTHS : Ruler.MILLIMETRES);

        assertThat(pages).hasSizeGreaterThan(8);
        pages.forEach(Legible::check);
    }

    @ParameterizedTest
    @EnumSource(value = Language.class, names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
    void nothing_that_is_said_stays_english(Language language) {
        Set<String> english = texts(pages(Language.ENGLISH, Ruler.MILLIMETRES));
        Set<String> own = texts(pages(language, Ruler.MILLIMETRES));

        own.retainAll(english);
        own.removeIf(text -> !WORD.matcher(withoutNames(text)).find());
        assertThat(own).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = Language.class,
            names = {"KOREAN", "JAPANESE"})
    void no_latin_word_stands_among_eastern_letters(Language language) {
        Set<String> own = texts(pages(language, Ruler.MILLIMETRES));

        own.removeIf(text -> !LATIN.matcher(withoutNames(text)).find());
        assertThat(own).isEmpty();
    }

    /** Without what is the maker's own, and the places where a rule of thumb was published. */
    private static String withoutNames(String text) {
        String bare = text.replaceAll(
                "National Museum of Ethnology, Osaka|City of Kiryu, page|Ethnology|National|Museum|Osaka|Kiryu|yotsu-musubi|[a-z]*haba",
                "");
        for (var fabric : PLAN.fabrics()) {
            bare = bare.replace(fabric.name(), "");
        }
        return bare;
    }

    private static Set<String> texts(List<Picture> pages) {
        Set<String> texts = new TreeSet<>();
        pages.forEach(page -> page.words().stream().map(Mark.Words::text).forEach(texts::add));
        return texts;
    }

    @Test
    void numbers_and_units_are_written_as_the_language_does() {
        assertThat(texts(pages(Language.GERMAN, Ruler.MILLIMETRES)))
                .anyMatch(text -> text.contains("2,5"))
                .noneMatch(text -> text.contains("2.5"));
        assertThat(texts(pages(Language.FRENCH, Ruler.EIGHTHS))).anyMatch(text -> text.matches(".*[⅛¼⅜½⅝¾⅞] po\\b.*"));
    }
}
