package hearthcloth.words;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Ruler;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.choosing.EnglishChoosing;
import hearthcloth.words.choosing.FrenchChoosing;
import hearthcloth.words.choosing.GermanChoosing;
import hearthcloth.words.choosing.JapaneseChoosing;
import hearthcloth.words.choosing.KoreanChoosing;
import hearthcloth.words.choosing.SpanishChoosing;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.designing.EnglishDesigning;
import hearthcloth.words.designing.FrenchDesigning;
import hearthcloth.words.designing.GermanDesigning;
import hearthcloth.words.designing.JapaneseDesigning;
import hearthcloth.words.designing.KoreanDesigning;
import hearthcloth.words.designing.SpanishDesigning;
import hearthcloth.words.entering.EnglishEntering;
import hearthcloth.words.entering.EnteringWords;
import hearthcloth.words.entering.FrenchEntering;
import hearthcloth.words.entering.GermanEntering;
import hearthcloth.words.entering.JapaneseEntering;
import hearthcloth.words.entering.KoreanEntering;
import hearthcloth.words.entering.SpanishEntering;
import hearthcloth.words.finishing.EnglishFinishing;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.words.finishing.FrenchFinishing;
import hearthcloth.words.finishing.GermanFinishing;
import hearthcloth.words.finishing.JapaneseFinishing;
import hearthcloth.words.finishing.KoreanFinishing;
import hearthcloth.words.finishing.SpanishFinishing;
import hearthcloth.words.framing.EnglishFraming;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.framing.FrenchFraming;
import hearthcloth.words.framing.GermanFraming;
import hearthcloth.words.framing.JapaneseFraming;
import hearthcloth.words.framing.KoreanFraming;
import hearthcloth.words.framing.SpanishFraming;
import hearthcloth.words.handing.EnglishHanding;
import hearthcloth.words.handing.FrenchHanding;
import hearthcloth.words.handing.GermanHanding;
import hearthcloth.words.handing.HandingWords;
import hearthcloth.words.handing.JapaneseHanding;
import hearthcloth.words.handing.KoreanHanding;
import hearthcloth.words.handing.SpanishHanding;
import hearthcloth.words.helping.EnglishHelping;
import hearthcloth.words.helping.FrenchHelping;
import hearthcloth.words.helping.GermanHelping;
import hearthcloth.words.helping.HelpingWords;
import hearthcloth.words.helping.JapaneseHelping;
import hearthcloth.words.helping.KoreanHelping;
import hearthcloth.words.helping.SpanishHelping;
import hearthcloth.words.keeping.EnglishKeeping;
import hearthcloth.words.keeping.FrenchKeeping;
import hearthcloth.words.keeping.GermanKeeping;
import hearthcloth.words.keeping.JapaneseKeeping;
import hearthcloth.words.keeping.KeepingWords;
import hearthcloth.words.keeping.KoreanKeeping;
import hearthcloth.words.keeping.SpanishKeeping;
import hearthcloth.words.making.EnglishMaking;
import hearthcloth.words.making.FrenchMaking;
import hearthcloth.words.making.GermanMaking;
import hearthcloth.words.making.JapaneseMaking;
import hearthcloth.words.making.KoreanMaking;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.making.SpanishMaking;
import hearthcloth.words.measuring.EnglishMeasuring;
import hearthcloth.words.measuring.FrenchMeasuring;
import hearthcloth.words.measuring.GermanMeasuring;
import hearthcloth.words.measuring.JapaneseMeasuring;
import hearthcloth.words.measuring.KoreanMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.measuring.SpanishMeasuring;
import hearthcloth.words.mending.EnglishMending;
import hearthcloth.words.mending.FrenchMending;
import hearthcloth.words.mending.GermanMending;
import hearthcloth.words.mending.JapaneseMending;
import hearthcloth.words.mending.KoreanMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.mending.SpanishMending;
import hearthcloth.words.photographing.EnglishPhotographing;
import hearthcloth.words.photographing.FrenchPhotographing;
import hearthcloth.words.photographing.GermanPhotographing;
import hearthcloth.words.photographing.JapanesePhotographing;
import hearthcloth.words.photographing.KoreanPhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.photographing.SpanishPhotographing;
import hearthcloth.words.picturing.EnglishPicturing;
import hearthcloth.words.picturing.FrenchPicturing;
import hearthcloth.words.picturing.GermanPicturing;
import hearthcloth.words.picturing.JapanesePicturing;
import hearthcloth.words.picturing.KoreanPicturing;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.picturing.SpanishPicturing;
import hearthcloth.words.planning.EnglishPlanning;
import hearthcloth.words.planning.FrenchPlanning;
import hearthcloth.words.planning.GermanPlanning;
import hearthcloth.words.planning.JapanesePlanning;
import hearthcloth.words.planning.KoreanPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.planning.SpanishPlanning;
import hearthcloth.words.printing.EnglishPrinting;
import hearthcloth.words.printing.FrenchPrinting;
import hearthcloth.words.printing.GermanPrinting;
import hearthcloth.words.printing.JapanesePrinting;
import hearthcloth.words.printing.KoreanPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.printing.SpanishPrinting;
import hearthcloth.words.reading.EnglishReading;
import hearthcloth.words.reading.FrenchReading;
import hearthcloth.words.reading.GermanReading;
import hearthcloth.words.reading.JapaneseReading;
import hearthcloth.words.reading.KoreanReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.reading.SpanishReading;
import hearthcloth.words.refusing.EnglishRefusing;
import hearthcloth.words.refusing.FrenchRefusing;
import hearthcloth.words.refusing.GermanRefusing;
import hearthcloth.words.refusing.JapaneseRefusing;
import hearthcloth.words.refusing.KoreanRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.refusing.SpanishRefusing;
import hearthcloth.words.reporting.EnglishReporting;
import hearthcloth.words.reporting.FrenchReporting;
import hearthcloth.words.reporting.GermanReporting;
import hearthcloth.words.reporting.JapaneseReporting;
import hearthcloth.words.reporting.KoreanReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.reporting.SpanishReporting;
import hearthcloth.words.room.EnglishRooms;
import hearthcloth.words.room.FrenchRooms;
import hearthcloth.words.room.GermanRooms;
import hearthcloth.words.room.JapaneseRooms;
import hearthcloth.words.room.KoreanRooms;
import hearthcloth.words.room.Rooms;
import hearthcloth.words.room.SpanishRooms;
import hearthcloth.words.ruling.EnglishRuling;
import hearthcloth.words.ruling.FrenchRuling;
import hearthcloth.words.ruling.GermanRuling;
import hearthcloth.words.ruling.JapaneseRuling;
import hearthcloth.words.ruling.KoreanRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.ruling.SpanishRuling;
import hearthcloth.words.sewing.EnglishSewing;
import hearthcloth.words.sewing.FrenchSewing;
import hearthcloth.words.sewing.GermanSewing;
import hearthcloth.words.sewing.JapaneseSewing;
import hearthcloth.words.sewing.KoreanSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.sewing.SpanishSewing;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.EnglishStashing;
import hearthcloth.words.stashing.FrenchStashing;
import hearthcloth.words.stashing.GermanStashing;
import hearthcloth.words.stashing.JapaneseStashing;
import hearthcloth.words.stashing.KoreanStashing;
import hearthcloth.words.stashing.SpanishStashing;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.words.storing.EnglishStoring;
import hearthcloth.words.storing.FrenchStoring;
import hearthcloth.words.storing.GermanStoring;
import hearthcloth.words.storing.JapaneseStoring;
import hearthcloth.words.storing.KoreanStoring;
import hearthcloth.words.storing.SpanishStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.teaching.EnglishTeaching;
import hearthcloth.words.teaching.FrenchTeaching;
import hearthcloth.words.teaching.GermanTeaching;
import hearthcloth.words.teaching.JapaneseTeaching;
import hearthcloth.words.teaching.KoreanTeaching;
import hearthcloth.words.teaching.SpanishTeaching;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.words.tying.EnglishTying;
import hearthcloth.words.tying.FrenchTying;
import hearthcloth.words.tying.GermanTying;
import hearthcloth.words.tying.JapaneseTying;
import hearthcloth.words.tying.KoreanTying;
import hearthcloth.words.tying.SpanishTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.EnglishTyping;
import hearthcloth.words.typing.FrenchTyping;
import hearthcloth.words.typing.GermanTyping;
import hearthcloth.words.typing.JapaneseTyping;
import hearthcloth.words.typing.KoreanTyping;
import hearthcloth.words.typing.SpanishTyping;
import hearthcloth.words.typing.TypingWords;
import hearthcloth.words.wrapping.EnglishWrapping;
import hearthcloth.words.wrapping.FrenchWrapping;
import hearthcloth.words.wrapping.GermanWrapping;
import hearthcloth.words.wrapping.JapaneseWrapping;
import hearthcloth.words.wrapping.KoreanWrapping;
import hearthcloth.words.wrapping.SpanishWrapping;
import hearthcloth.words.wrapping.WrappingWords;
import java.lang.reflect.Method;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for the catalogue of every room in every language, whatever it says. */
class EveryCatalogueTest {

    /** A room's messages, its door, and its catalogues in the order of {@link Language}. */
    private record Room(Class<?> words, Function<Language, Object> door, List<Class<?>> catalogues) {}

    private static final List<Room> ROOMS = List.of(
            new Room(
                    ChoosingWords.class,
                    ChoosingWords::in,
                    List.of(
                            EnglishChoosing.class,
                            KoreanChoosing.class,
                            JapaneseChoosing.class,
                            FrenchChoosing.class,
                            GermanChoosing.class,
                            SpanishChoosing.class)),
            new Room(
                    DesigningWords.class,
                    DesigningWords::in,
                    List.of(
                            EnglishDesigning.class,
                            KoreanDesigning.class,
                            JapaneseDesigning.class,
                            FrenchDesigning.class,
                            GermanDesigning.class,
                            SpanishDesigning.class)),
            new Room(
                    EnteringWords.class,
                    EnteringWords::in,
                    List.of(
                            EnglishEntering.class,
                            KoreanEntering.class,
                            JapaneseEntering.class,
                            FrenchEntering.class,
                            GermanEntering.class,
                            SpanishEntering.class)),
            new Room(
                    FinishingWords.class,
                    FinishingWords::in,
                    List.of(
                            EnglishFinishing.class,
                            KoreanFinishing.class,
                            JapaneseFinishing.class,
                            FrenchFinishing.class,
                            GermanFinishing.class,
                            SpanishFinishing.class)),
            new Room(
                    FramingWords.class,
                    FramingWords::in,
                    List.of(
                            EnglishFraming.class,
                            KoreanFraming.class,
                            JapaneseFraming.class,
                            FrenchFraming.class,
                            GermanFraming.class,
                            SpanishFraming.class)),
            new Room(
                    HandingWords.class,
                    HandingWords::in,
                    List.of(
                            EnglishHanding.class,
                            KoreanHanding.class,
                            JapaneseHanding.class,
                            FrenchHanding.class,
                            GermanHanding.class,
                            SpanishHanding.class)),
            new Room(
                    HelpingWords.class,
                    HelpingWords::in,
                    List.of(
                            EnglishHelping.class,
                            KoreanHelping.class,
                            JapaneseHelping.class,
                            FrenchHelping.class,
                            GermanHelping.class,
                            SpanishHelping.class)),
            new Room(
                    KeepingWords.class,
                    KeepingWords::in,
                    List.of(
                            EnglishKeeping.class,
                            KoreanKeeping.class,
                            JapaneseKeeping.class,
                            FrenchKeeping.class,
                            GermanKeeping.class,
                            SpanishKeeping.class)),
            new Room(
                    MakingWords.class,
                    MakingWords::in,
                    List.of(
                            EnglishMaking.class,
                            KoreanMaking.class,
                            JapaneseMaking.class,
                            FrenchMaking.class,
                            GermanMaking.class,
                            SpanishMaking.class)),
            new Room(
                    MeasuringWords.class,
                    language -> rooms(language).measuring(),
                    List.of(
                            EnglishMeasuring.class,
                            KoreanMeasuring.class,
                            JapaneseMeasuring.class,
                            FrenchMeasuring.class,
                            GermanMeasuring.class,
                            SpanishMeasuring.class)),
            new Room(
                    PicturingWords.class,
                    PicturingWords::in,
                    List.of(
                            EnglishPicturing.class,
                            KoreanPicturing.class,
                            JapanesePicturing.class,
                            FrenchPicturing.class,
                            GermanPicturing.class,
                            SpanishPicturing.class)),
            new Room(
                    MendingWords.class,
                    language -> rooms(language).mending(),
                    List.of(
                            EnglishMending.class,
                            KoreanMending.class,
                            JapaneseMending.class,
                            FrenchMending.class,
                            GermanMending.class,
                            SpanishMending.class)),
            new Room(
                    PhotographingWords.class,
                    language -> rooms(language).photographing(),
                    List.of(
                            EnglishPhotographing.class,
                            KoreanPhotographing.class,
                            JapanesePhotographing.class,
                            FrenchPhotographing.class,
                            GermanPhotographing.class,
                            SpanishPhotographing.class)),
            new Room(
                    RulingWords.class,
                    language -> rooms(language).ruling(),
                    List.of(
                            EnglishRuling.class,
                            KoreanRuling.class,
                            JapaneseRuling.class,
                            FrenchRuling.class,
                            GermanRuling.class,
                            SpanishRuling.class)),
            new Room(
                    RefusingWords.class,
                    language -> rooms(language).refusing(),
                    List.of(
                            EnglishRefusing.class,
                            KoreanRefusing.class,
                            JapaneseRefusing.class,
                            FrenchRefusing.class,
                            GermanRefusing.class,
                            SpanishRefusing.class)),
            new Room(
                    StoringWords.class,
                    language -> rooms(language).storing(),
                    List.of(
                            EnglishStoring.class,
                            KoreanStoring.class,
                            JapaneseStoring.class,
                            FrenchStoring.class,
                            GermanStoring.class,
                            SpanishStoring.class)),
            new Room(
                    PlanningWords.class,
                    language -> rooms(language).planning(),
                    List.of(
                            EnglishPlanning.class,
                            KoreanPlanning.class,
                            JapanesePlanning.class,
                            FrenchPlanning.class,
                            GermanPlanning.class,
                            SpanishPlanning.class)),
            new Room(
                    PrintingWords.class,
                    language -> rooms(language).printing(),
                    List.of(
                            EnglishPrinting.class,
                            KoreanPrinting.class,
                            JapanesePrinting.class,
                            FrenchPrinting.class,
                            GermanPrinting.class,
                            SpanishPrinting.class)),
            new Room(
                    ReadingWords.class,
                    language -> rooms(language).reading(),
                    List.of(
                            EnglishReading.class,
                            KoreanReading.class,
                            JapaneseReading.class,
                            FrenchReading.class,
                            GermanReading.class,
                            SpanishReading.class)),
            new Room(
                    ReportingWords.class,
                    language -> rooms(language).reporting(),
                    List.of(
                            EnglishReporting.class,
                            KoreanReporting.class,
                            JapaneseReporting.class,
                            FrenchReporting.class,
                            GermanReporting.class,
                            SpanishReporting.class)),
            new Room(
                    SewingWords.class,
                    language -> rooms(language).sewing(),
                    List.of(
                            EnglishSewing.class,
                            KoreanSewing.class,
                            JapaneseSewing.class,
                            FrenchSewing.class,
                            GermanSewing.class,
                            SpanishSewing.class)),
            new Room(
                    StashingWords.class,
                    StashingWords::in,
                    List.of(
                            EnglishStashing.class,
                            KoreanStashing.class,
                            JapaneseStashing.class,
                            FrenchStashing.class,
                            GermanStashing.class,
                            SpanishStashing.class)),
            new Room(
                    TeachingWords.class,
                    TeachingWords::in,
                    List.of(
                            EnglishTeaching.class,
                            KoreanTeaching.class,
                            JapaneseTeaching.class,
                            FrenchTeaching.class,
                            GermanTeaching.class,
                            SpanishTeaching.class)),
            new Room(
                    TyingWords.class,
                    language -> rooms(language).tying(),
                    List.of(
                            EnglishTying.class,
                            KoreanTying.class,
                            JapaneseTying.class,
                            FrenchTying.class,
                            GermanTying.class,
                            SpanishTying.class)),
            new Room(
                    TypingWords.class,
                    language -> rooms(language).typing(),
                    List.of(
                            EnglishTyping.class,
                            KoreanTyping.class,
                            JapaneseTyping.class,
                            FrenchTyping.class,
                            GermanTyping.class,
                            SpanishTyping.class)),
            new Room(
                    WrappingWords.class,
                    WrappingWords::in,
                    List.of(
                            EnglishWrapping.class,
                            KoreanWrapping.class,
                            JapaneseWrapping.class,
                            FrenchWrapping.class,
                            GermanWrapping.class,
                            SpanishWrapping.class)));

    private static final Pattern KOREAN = Pattern.compile("[\\uac00-\\ud7a3]");
    private static final Pattern JAPANESE = Pattern.compile("[\\u3040-\\u30ff\\u4e00-\\u9fff]");
    private static final Pattern HOLE = Pattern.compile("[{}]");

    private static Rooms rooms(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishRooms();
            case KOREAN -> new KoreanRooms();
            case JAPANESE -> new JapaneseRooms();
            case FRENCH -> new FrenchRooms();
            case GERMAN -> new GermanRooms();
            case SPANISH -> new SpanishRooms();
        };
    }

    @Test
    void a_voice_speaks_in_the_rooms_of_its_language() {
        for (Language language : Language.values()) {
            Voice voice = Voice.of(language, Ruler.EIGHTHS);
            assertThat(voice.measuring()).hasSameClassAs(rooms(language).measuring());
            assertThat(voice.printing()).hasSameClassAs(rooms(language).printing());
            assertThat(voice.sewing()).hasSameClassAs(rooms(language).sewing());
            assertThat(voice.tying()).hasSameClassAs(rooms(language).tying());
        }
    }

    /** What a catalogue says without being told anything. */
    private static Stream<String> said(Object catalogue) {
        return Stream.of(catalogue.getClass().getDeclaredMethods())
                .filter(method -> method.getParameterCount() == 0 && method.getReturnType() == String.class)
                .map(method -> said(catalogue, method));
    }

    /** Examples to be typed, such as a box of 30 x 20 x 10 cm, are the same in every language; sentences are not. */
    private static boolean isSentence(String text) {
        return text.length() > 12 && ".?!\u3002\uff1f".indexOf(text.charAt(text.length() - 1)) >= 0;
    }

    private static String said(Object catalogue, Method method) {
        try {
            return (String) method.invoke(catalogue);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(method.getName(), e);
        }
    }

    @Test
    void each_language_is_answered_by_its_own_catalogue() {
        for (Room room : ROOMS) {
            List<Language> languages = List.of(Language.values());
            for (int i = 0; i < languages.size(); i++) {
                assertThat(room.door().apply(languages.get(i)))
                        .as("%s", languages.get(i))
                        .isInstanceOf(room.words())
                        .isExactlyInstanceOf(room.catalogues().get(i));
            }
        }
    }

    @Test
    void no_message_is_empty_and_none_shows_where_something_should_stand() {
        for (Room room : ROOMS) {
            for (Language language : Language.values()) {
                Object catalogue = room.door().apply(language);
                assertThat(said(catalogue))
                        .as("%s", catalogue.getClass().getSimpleName())
                        .isNotEmpty()
                        .allSatisfy(text -> assertThat(text).isNotBlank().doesNotContainPattern(HOLE));
            }
        }
    }

    @Test
    void whole_sentences_are_written_in_the_letters_of_their_language() {
        for (Room room : ROOMS) {
            assertThat(said(room.door().apply(Language.KOREAN)).filter(EveryCatalogueTest::isSentence))
                    .allSatisfy(text ->
                            assertThat(text).containsPattern(KOREAN).doesNotContainPattern("[\\u3040-\\u30ff]"));
            assertThat(said(room.door().apply(Language.JAPANESE)).filter(EveryCatalogueTest::isSentence))
                    .allSatisfy(
                            text -> assertThat(text).containsPattern(JAPANESE).doesNotContainPattern(KOREAN));
            for (Language latin : List.of(Language.ENGLISH, Language.FRENCH, Language.GERMAN, Language.SPANISH)) {
                assertThat(said(room.door().apply(latin)))
                        .allSatisfy(text ->
                                assertThat(text).doesNotContainPattern(KOREAN).doesNotContainPattern(JAPANESE));
            }
        }
    }

    @Test
    void long_sentences_are_translated_and_not_left_in_english() {
        for (Room room : ROOMS) {
            List<String> english = said(room.door().apply(Language.ENGLISH))
                    .filter(text -> text.length() > 40)
                    .toList();
            for (Language language : Language.values()) {
                if (language != Language.ENGLISH && !english.isEmpty()) {
                    assertThat(said(room.door().apply(language)))
                            .as("%s", language)
                            .doesNotContainAnyElementsOf(english);
                }
            }
        }
    }

    @Test
    void a_guide_is_printed_in_the_language_chosen_and_a_page_in_it_or_in_english() {
        for (Language language : Language.values()) {
            assertThat(Spoken.inGuides(language)).isEqualTo(language);
            assertThat(Spoken.onPages(language)).isIn(language, Language.ENGLISH);
        }
        assertThat(Spoken.guides()).containsExactly(Language.values());
        assertThat(Spoken.onPages(Language.ENGLISH)).isEqualTo(Language.ENGLISH);
    }
}
