package hearthcloth.colour.tongue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link Vocabulary} by a small table, and laws of the tables there are: {@link LatinTables}, {@link LatinWords}, {@link EasternWords}. */
class VocabularyTest {

    private static final Vocabulary SMALL =
            Vocabulary.read(Vocabulary.Habit.COMPOUNDS, "blue: Bläue bleu*\nlight red: rosée*\n", "e", "s", "es");

    @Test
    void a_word_is_known_in_small_letters_without_accents_and_with_its_endings() {
        assertThat(SMALL.meaning("blaue")).contains("blue");
        assertThat(SMALL.meaning("bleu")).contains("blue");
        assertThat(SMALL.meaning("bleus")).contains("blue");
        assertThat(SMALL.meaning("bleues")).contains("blue");
        assertThat(SMALL.meaning("rosee")).contains("light red");
        assertThat(SMALL.meaning("roses")).as("it lost its e").contains("light red");
        assertThat(SMALL.meaning("Bleu")).isEmpty();
        assertThat(SMALL.meaning("")).isEmpty();
    }

    @Test
    void letters_of_two_are_told_apart() {
        assertThat(Vocabulary.plain("Weiß")).isEqualTo("weiss");
        assertThat(Vocabulary.plain("ŒUF Ægir")).isEqualTo("oeuf aegir");
        assertThat(Vocabulary.plain("àâäáãåçéèêëíîïìóôöòõúûüùñÿ")).isEqualTo("aaaaaaceeeeiiiiooooouuuuny");
        assertThat(Vocabulary.plain("파란 青")).isEqualTo("파란 青");
    }

    /** Otherwise a word stands in its table and is never found. */
    @Test
    void every_word_of_every_table_is_written_as_it_is_looked_up() {
        for (Vocabulary table : List.of(LatinTables.FRENCH, LatinTables.GERMAN, LatinTables.SPANISH)) {
            assertThat(table.meanings()).hasSizeGreaterThan(100);
            table.meanings().forEach((word, english) -> {
                assertThat(Vocabulary.plain(word)).isEqualTo(word);
                assertThat(table.meaning(word)).contains(english);
                assertThat(english).isEqualTo(english.strip()).doesNotContain(":");
            });
        }
    }

    @Test
    void a_tone_behind_its_colour_comes_before_it_in_english() {
        assertThat(LatinWords.english("lin bleu clair")).isEqualTo("linen light blue");
        assertThat(LatinWords.english("my own scrap")).as("English stays").isEqualTo("my own scrap");
    }

    @Test
    void a_name_is_taken_apart_where_words_of_the_east_begin_and_end() {
        assertThat(EasternWords.parts("kelp linen")).containsExactly("kelp linen");
        assertThat(EasternWords.parts("파란 리넨")).contains("blue", "linen");
        assertThat(EasternWords.parts("")).isEmpty();
    }
}
