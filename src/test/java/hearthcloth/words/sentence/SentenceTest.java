package hearthcloth.words.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import java.util.List;
import org.junit.jupiter.api.Test;

class SentenceTest {

    private static final Sentence SHORT = PlanningSentences.shortOf(
            Argument.names(Argument.Joined.OR, List.of("Oat", "Kelp \"\\;(")),
            Argument.of(Length.inches(7), Rounding.UP),
            "proven",
            Argument.row(Argument.Joined.COMMAS, List.of(PlanningSentences.hearth(), Argument.text("2C"))),
            Argument.of(Length.inches(4), Rounding.UP));

    @Test
    void a_sentence_is_said_in_the_readers_language_and_unit() {
        Sentence wide = PlanningSentences.chosenBars(Argument.of(Length.mm(95), Rounding.NEAREST));

        assertThat(wide.english()).isEqualTo("Bars cut 3¾ in wide.");
        assertThat(wide.in(Voice.of(Language.GERMAN, Ruler.MILLIMETRES)))
                .isEqualTo("Streifen 9,5 cm breit geschnitten.");
    }

    @Test
    void what_is_the_same_message_with_the_same_in_it_is_equal() {
        assertThat(PlanningSentences.chosenRounds(2))
                .isEqualTo(PlanningSentences.chosenRounds(2))
                .hasSameHashCodeAs(PlanningSentences.chosenRounds(2))
                .isNotEqualTo(PlanningSentences.chosenRounds(3))
                .isNotEqualTo(PlanningSentences.colourMixed(2));
        assertThat(PlanningSentences.chosenRounds(2).isLike(PlanningSentences.chosenRounds(3)))
                .isTrue();
    }

    @Test
    void sentences_in_a_row_are_said_one_after_the_other_and_nothing_is_left_out_silently() {
        Sentence row = PlanningSentences.chosenRounds(1)
                .then(Sentence.none())
                .then(Sentence.itself("Mine."))
                .then(SHORT);

        assertThat(row.parts()).containsExactly(PlanningSentences.chosenRounds(1), Sentence.itself("Mine."), SHORT);
        assertThat(row.english()).startsWith("One round. Mine. Oat or Kelp ");
        assertThat(Sentence.row(List.of()).isEmpty()).isTrue();
        assertThat(Sentence.none().then(SHORT)).isEqualTo(SHORT);
    }

    @Test
    void what_is_written_is_read_back_the_same() {
        List<Sentence> all = List.of(
                SHORT,
                PlanningSentences.chosenRounds(3).then(Sentence.itself("A \"b\"; c")),
                PlanningSentences.scrapsUsed(
                        new Argument.Percent("3.4"),
                        3,
                        Argument.number(1),
                        Argument.number(1),
                        new Argument.Decimal("1.5")),
                PlanningSentences.chosenReadyBars(
                        new Argument.Widths(List.of(Length.mm(70), Length.mm(95)), Rounding.NEAREST)),
                PlanningSentences.chosenHearth(Argument.of(Size.square(Length.cm(9)), Rounding.UP)),
                PlanningSentences.scrapsShort(Argument.area(1234.5, Rounding.DOWN)),
                PlanningSentences.colour(Argument.capital(PlanningSentences.colourApart())),
                Sentence.none());

        assertThat(all)
                .allSatisfy(one -> assertThat(SentenceNotation.parse(SentenceNotation.print(one)))
                        .contains(one));
    }

    @Test
    void what_this_version_does_not_know_is_no_sentence() {
        assertThat(List.of(
                        "",
                        "planning/no.such(#1)",
                        "planning/chosen.rounds(\"2\")",
                        "planning/chosen.rounds()",
                        "planning/chosen.rounds(#1",
                        "elsewhere/chosen.rounds(#1)",
                        "planning/chosen.hearth(L12)",
                        "\"words\""))
                .allSatisfy(text -> assertThat(SentenceNotation.parse(text)).isEmpty());
    }

    @Test
    void a_length_that_cannot_be_read_is_refused_with_what_was_typed_in_every_language() {
        for (String text : List.of("", "-3 in", "7", "7 ells", "7 in in", "1/0 in", "1,200 in", "9999999 m", "? in")) {
            MeasureException refused = catchThrowableOfType(MeasureException.class, () -> Measures.length(text, null));
            Sentence sentence = RefusedException.sentence(refused);

            assertThat(refused.slip()).as(text).isNotEqualTo(MeasureException.Slip.OTHER);
            assertThat(sentence.english()).contains(text);
            assertThat(sentence.in(Voice.of(Language.KOREAN, Ruler.MILLIMETRES)))
                    .contains(text)
                    .isNotEqualTo(sentence.english());
        }
        MeasureException three =
                catchThrowableOfType(MeasureException.class, () -> Measures.size("1 x 2 x 3 in", null));
        assertThat(RefusedException.sentence(three).english())
                .isEqualTo("\"1 x 2 x 3 in\" has 3 numbers; a size has one (a square) or two, such as \"12 x 9 in\"");
        assertThat(RefusedException.sentence(new MeasureException("own words")).english())
                .isEqualTo("own words");
    }
}
