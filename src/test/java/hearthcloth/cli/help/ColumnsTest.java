package hearthcloth.cli.help;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Lines on a terminal, counted in columns (docs/sources.md#wide-letters) and parted as each language allows. */
class ColumnsTest {

    private static boolean isWide(int letter) {
        int width = UCharacter.getIntPropertyValue(letter, UProperty.EAST_ASIAN_WIDTH);
        return width == UCharacter.EastAsianWidth.WIDE || width == UCharacter.EastAsianWidth.FULLWIDTH;
    }

    /** Unicode's table is ICU's; letters that no catalogue has, such as faces and flags, are not asked for. */
    @Test
    void a_letter_takes_as_many_columns_as_unicode_says() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/main/words"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.readString(file)
                        .codePoints()
                        .filter(letter -> letter >= ' ')
                        .distinct()
                        .forEach(letter -> assertThat(Columns.of(Character.toString(letter)))
                                .as(Character.getName(letter))
                                .isEqualTo(isWide(letter) ? 2 : 1));
            }
        }
        for (int letter : new int[] {0xac00, 0xd7a3, 0x3042, 0x30a2, 0x4e00, 0x9fff, 0xff01, 0xff60, 0xff61, 0x20000}) {
            assertThat(Columns.of(Character.toString(letter))).isEqualTo(isWide(letter) ? 2 : 1);
        }
    }

    @Test
    void words_are_parted_at_blanks_and_japanese_between_letters_but_not_before_a_full_stop() {
        assertThat(Columns.lines("one two three", 7)).isEqualTo(List.of("one two", "three"));
        assertThat(Columns.lines("보자기를 계획", 9)).isEqualTo(List.of("보자기를", "계획"));
        assertThat(Columns.lines("布を裁つ。糸", 8)).isEqualTo(List.of("布を裁", "つ。糸"));
        assertThat(Columns.lines("unpartable", 4)).isEqualTo(List.of("unpartable"));
        assertThat(Columns.lines("", 4)).isEqualTo(List.of(""));
    }

    @Test
    void the_last_line_is_no_stub_where_the_lines_before_can_spare_a_word() {
        assertThat(Columns.lines("press the seam flat towards the hem", 34))
                .isEqualTo(List.of("press the seam flat", "towards the hem"));
        assertThat(Columns.lines("press it flat then a", 18)).isEqualTo(List.of("press it", "flat then a"));
    }

    @Test
    void words_are_padded_to_a_column_however_wide_their_letters_are() {
        assertThat(Columns.padded("길이", 6)).isEqualTo("길이  ");
        assertThat(Columns.padded("cm", 4)).isEqualTo("cm  ");
        assertThat(Columns.padded("length", 4)).isEqualTo("length");
    }
}
