package hearthcloth.draw.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where lines may end, by hand and against the rules of the Java library. */
class LineBreaksTest {

    /** The parts with a bar between them; a blank stands before the bar, a hyphen that only shows there as ~. */
    private static String parted(String text) {
        StringBuilder out = new StringBuilder();
        List<LineBreaks.Part> parts = LineBreaks.parts(text);
        for (LineBreaks.Part part : parts) {
            out.append(out.isEmpty() ? "" : part.before() + "|")
                    .append(part.text())
                    .append(part.ending().replace('-', '~'));
        }
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            Stitch ½ in from the edge  ; Stitch |½ |in |from |the |edge
            막대 1A를 바탕 쪽으로 다립니다. ; 막대 |1A를 |바탕 |쪽으로 |다립니다.
            布を折る。                   ; 布|を|折|る。
            「表」を上に                 ; 「表」|を|上|に
            アイロンをかけて、           ; ア|イ|ロ|ン|を|か|け|て、
            チャコ                      ; チャ|コ
            縫いしろ 10\u00a0mm、中表    ; 縫|い|し|ろ |10\u00a0mm、|中|表
            1A枚目                      ; 1A|枚|目
            （裏）                      ; （裏）
            いろいろ……と               ; い|ろ|い|ろ|……|と
            韓國어로                    ; 韓|國어로
            """)
    void western_and_korean_words_stay_whole_and_japanese_is_parted_by_its_rules(String text, String parts) {
        assertThat(parted(text.replace("\\u00a0", "\u00a0"))).isEqualTo(parts.replace("\\u00a0", "\u00a0"));
    }

    @Test
    void a_soft_hyphen_parts_a_word_and_shows_only_where_the_line_ends() {
        assertThat(parted("die Naht\u00adzu\u00adgabe")).isEqualTo("die |Naht~|zu~|gabe");
        assertThat(SafeText.onOneLine("Naht\u00adzu\u00adgabe")).isEqualTo("Nahtzugabe");
        assertThat(Typeface.width("Naht\u00adzu\u00adgabe", 4, Weight.REGULAR))
                .isEqualTo(Typeface.width("Nahtzugabe", 4, Weight.REGULAR));
    }

    @ParameterizedTest
    @CsvSource({
        "Nahtzugabenmarkierung, Naht-zu-ga-ben-mar-kie-rung",
        "Leinenstreifen, Lei-nen-strei-fen",
        "Stoffstreifen, Stoff-strei-fen",
        "nuestros, nues-tros",
        "Baumwolltaschentuch, Baum-woll-ta-schen-tuch",
        "rectangulaire, rec-tan-gu-laire",
        "pespunteado, pes-pun-teado",
        "1A-Streifen, 1A-Streifen",
        "oat, oat"
    })
    void a_word_too_long_is_parted_between_its_syllables(String word, String parted) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int place : LineBreaks.syllables(word)) {
            out.append(word, from, place).append('-');
            from = place;
        }
        assertThat(out + word.substring(from)).isEqualTo(parted);
    }

    /** Every place where we end a line is one where the Java library would. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "縫い代は、上側の布の端から１センチのところを縫い、返し縫いで両端をとめます。",
                "「表」を上にして置き、アイロンで縫い代を中心側へ倒します（４枚重なります）。",
                "ぬのを半分に折って、しつけをかけてから、きっちりとプレスしてください！もう一度？",
                "端を三つ折りにして、折り山から２ミリ内側にステッチをかける〜終わり。",
                "막대 조각을 바탕의 위쪽 가장자리에 겉끼리 맞대고, 10 mm 들여서 박습니다."
            })
    void no_line_ends_where_the_library_of_the_language_would_not_end_one(String text) {
        BreakIterator library = BreakIterator.getLineInstance(Locale.JAPANESE);
        library.setText(text);
        List<Integer> ours = new ArrayList<>();
        int at = 0;
        for (LineBreaks.Part part : LineBreaks.parts(text)) {
            at += part.before().length();
            if (at > 0) {
                ours.add(at);
            }
            at += part.text().length();
        }
        assertThat(at).isEqualTo(text.length());
        assertThat(ours)
                .isNotEmpty()
                .allSatisfy(place -> assertThat(library.isBoundary(place))
                        .as(text.substring(0, place) + "|" + text.substring(place))
                        .isTrue());
    }
}
