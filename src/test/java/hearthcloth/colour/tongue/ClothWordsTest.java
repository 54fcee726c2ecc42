package hearthcloth.colour.tongue;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of fabrics in six languages against the English names that mean the same. */
class ClothWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lin bleu                    | blue linen
            lin bleu clair              | light blue linen
            coton vert foncé            | dark green
            toile grise                 | grey
            bleu marine                 | marine
            vert bouteille              | bottle green
            rouge vif à pois            | bright red
            soie rose pâle              | pale rose
            Tissu Écru                  | ecru
            carreaux rouges et blancs   | red and white
            lin gris-bleu               | grey blue
            blaue Leinenstreifen        | blue
            hellblau                    | light blue
            dunkelgrüner Baumwollstoff  | dark green
            dunkles Grün                | dark green
            graue Wolle                 | grey
            blaugrau                    | bluish grey
            rot kariert                 | red
            weiß-rot gestreift          | white red
            Leinenrest                  | linen
            himmelblau                  | sky
            senfgelb geblümt            | mustard
            ein Rest, weinrot           | wine
            helles Grau                 | light grey
            dunkelgrau                  | dark grey
            blassgelb                   | pale yellow
            lila Leinen                 | purple linen
            knallrot                    | bright red
            lino azul                   | blue linen
            lino azul claro             | light blue
            gris oscuro                 | dark grey
            algodón rojo a cuadros      | red
            verde oliva                 | olive
            tela lila                   | lilac
            azul marino                 | navy
            amarillo pálido             | pale yellow
            rosa vivo                   | bright pink
            파란 리넨                    | blue linen
            회색                         | grey
            진회색 리넨                  | dark grey
            연한 분홍 면                 | light pink
            연보라색                     | light purple
            빨간 체크무늬                | red
            하늘색 줄무늬                | sky
            남색                         | indigo
            흰 광목                      | white
            검은색 꽃무늬                | black
            엄마의 초록 치마             | green
            青いリネン                   | blue linen
            灰色                         | grey
            濃紺                         | navy
            濃い緑の布                   | dark green
            薄いピンク                   | light pink
            薄緑                         | light green
            연회색                       | light grey
            gris clair                   | light grey
            hellgrau                     | light grey
            薄い灰色                     | light grey
            terre cuite                  | terracotta
            赤と白のチェック             | red and white
            青無地                       | blue
            生成りの麻                   | unbleached linen
            水色のストライプ             | sky
            紺地に白の水玉               | navy and white
            こげ茶                       | dark brown
            ライトブルー                 | light blue
            """)
    void a_name_says_the_same_colour_in_each_language(String name, String english) {
        assertThat(Colour.named(name)).as(ClothWords.english(name)).isPresent().isEqualTo(Colour.named(english));
    }

    @ParameterizedTest
    @CsvSource({
        "gris, grey",
        "grau, grey",
        "gris oscuro, dark grey",
        "회색, grey",
        "灰色, grey",
        "dunkelgrau, dark grey",
        "noir, black",
        "schwarz, black",
        "negro, black",
        "검정, black",
        "黒, black",
        "weiß, white",
        "흰색, white",
        "白, white",
        "rouge, red",
        "rot, red",
        "rojo, red",
        "빨강, red",
        "赤, red",
        "braun, brown",
        "갈색, brown",
        "茶色, brown",
        "marron, brown",
        "marrón, brown",
        "보라, purple",
        "紫, purple",
        "morado, purple"
    })
    void and_that_colour_is_called_so(String name, String english) {
        assertThat(Colour.named(name).map(ColourName::of)).contains(english);
    }

    /** Names of people, places and things that hold a colour word, and English words that another language has too. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "青山さんの布",
                "赤ちゃんの服",
                "白石",
                "紅茶",
                "花子さんのスレッド",
                "새 천",
                "은은한 천",
                "아연",
                "stern",
                "roses",
                "hell",
                "Muster",
                "arena",
                "Grandma's curtain",
                "shirt 501"
            })
    void a_word_inside_another_or_of_another_meaning_is_no_colour(String name) {
        assertThat(Colour.named(name)).as(ClothWords.english(name)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "green print",
                "oat",
                "pale linen, washed",
                "Harbour slate",
                "two-tone silk",
                "blé d'été",
                "violet roses",
                "marine stripe",
                "Large orange print"
            })
    void an_english_name_stays_as_it_was_written(String name) {
        assertThat(ClothWords.english(name)).isEqualTo(name);
    }

    @Test
    void cloth_and_what_is_printed_on_it_are_read_too() {
        assertThat(ClothWords.english("파란 리넨 줄무늬")).isEqualTo("blue linen stripe");
        assertThat(ClothWords.english("grün gestreifter Cord")).isEqualTo("green stripe corduroy");
        assertThat(ClothWords.english("lin fleuri")).isEqualTo("linen floral");
        assertThat(ClothWords.english("petits carreaux bleus")).isEqualTo("small check blue");
        assertThat(ClothWords.english("pana marrón")).isEqualTo("corduroy brown");
        assertThat(ClothWords.english("デニム")).isEqualTo("denim");
        assertThat(ClothWords.english("小花柄のコーデュロイ"))
                .contains("small")
                .contains("floral")
                .contains("corduroy");
    }
}
