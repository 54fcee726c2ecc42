package hearthcloth.stash.tongue;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines of pieces in five languages besides English, as a maker would write or say them. */
class LineWordsTest {

    private static SpokenPieces heard(String line) {
        SpokenLine said = SpokenPieces.hear(line, Unit.CENTIMETRE);
        assertThat(said).as(line + " = " + LineWords.english(line)).isInstanceOf(SpokenPieces.class);
        return (SpokenPieces) said;
    }

    /** Sides in millimetres. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3 bandes lin bleu 10 x 50 cm                      | 3 | 100 | 500 | lin bleu
            trois bandes de lin bleu de 10 x 50 cm            | 3 | 100 | 500 | lin bleu
            lin bleu, 2 morceaux, 12,5 par 20 cm              | 2 | 125 | 200 | lin bleu
            12 carrés de 6 cm en coton rouge                  | 12 | 60 | 60 | coton rouge
            douze carrés de 6 cm, coton rouge                 | 12 | 60 | 60 | coton rouge
            une douzaine de chutes de soie 10 x 10 cm         | 12 | 100 | 100 | soie
            une demi-douzaine de bandes de lin 5 x 40 cm      | 6 | 50 | 400 | lin
            1,5 m de lin bleu en 140 cm de large              | 1 | 1400 | 1500 | lin bleu
            un mètre et demi de toile, laize 140              | 1 | 1400 | 1500 | toile
            deux pièces de coton à pois 30 sur 40 cm chacune  | 2 | 300 | 400 | coton à pois
            coton d'été 30 x 40 cm                            | 1 | 300 | 400 | coton d'été
            blaue Leinenstreifen 10 x 50 cm                   | 1 | 100 | 500 | blaue Leinenstreifen
            drei blaue Leinenstreifen, 10 mal 50 cm           | 3 | 100 | 500 | blaue Leinenstreifen
            3 Streifen blaues Leinen 10 x 50 cm               | 3 | 100 | 500 | blaues Leinen
            4 Stück von grüner Wolle, je 12,5 x 20 cm         | 4 | 125 | 200 | grüner Wolle
            zwölf Quadrate von 15 cm, Baumwolle               | 12 | 150 | 150 | Baumwolle
            elf Reste Seide 10 x 10 Zentimeter                | 11 | 100 | 100 | Seide
            ein halbes Dutzend Flicken 5 x 5 cm, rot          | 6 | 50 | 50 | rot
            ein Paar Streifen 5 x 50 cm, rot                  | 2 | 50 | 500 | rot
            anderthalb Meter Leinen, 140 cm breit             | 1 | 1400 | 1500 | Leinen
            zwei Meter grauer Cord, 110 cm breit              | 1 | 1100 | 2000 | grauer Cord
            3 tiras de lino azul de 10 x 50 cm                | 3 | 100 | 500 | lino azul
            tres tiras lino azul 10 por 50 centímetros        | 3 | 100 | 500 | lino azul
            doce cuadrados de 6 cm, algodón rojo              | 12 | 60 | 60 | algodón rojo
            media docena de retales de seda 10 x 10 cm        | 6 | 100 | 100 | seda
            once trozos de tela 10 x 12,5 cm                  | 11 | 100 | 125 | tela
            metro y medio de lino, 140 cm de ancho            | 1 | 1400 | 1500 | lino
            2 m de largo y 140 cm de ancho, pana              | 1 | 1400 | 2000 | pana
            파란 리넨 30 x 40 cm 두 장                         | 2 | 300 | 400 | 파란 리넨
            파란 리넨 30x40cm 2장                              | 2 | 300 | 400 | 파란 리넨
            세 조각, 빨간 체크 12.5 × 20 센티                   | 3 | 125 | 200 | 빨간 체크
            회색 린넨 가로 30 세로 40 열두 장                   | 12 | 300 | 400 | 회색 린넨
            초록 면 사방 15 cm 4개                             | 4 | 150 | 150 | 초록 면
            남색 광목 폭 110cm 길이 2미터                       | 1 | 1100 | 2000 | 남색 광목
            노란 면 두 마, 폭 110 센티                          | 1 | 1100 | 1829 | 노란 면
            青いリネン 30×40センチ 2枚                          | 2 | 300 | 400 | 青いリネン
            青いリネン３０×４０ｃｍ二枚                          | 2 | 300 | 400 | 青いリネン
            はぎれ10センチ角を12枚                              | 12 | 100 | 100 | はぎれ
            赤いチェックの布、12.5cm×20cm、3枚                  | 3 | 125 | 200 | 赤いチェックの布
            紺のデニム 幅110cm 長さ2m                           | 1 | 1100 | 2000 | 紺のデニム
            110cm幅の生成りの麻を50cm                           | 1 | 1100 | 500 | 生成りの麻
            demi-mètre de lin rouge, 140 cm                     | 1 | 1400 | 500 | lin rouge
            1,5 m lin rouge, laize 140                          | 1 | 1400 | 1500 | lin rouge
            halber Meter roter Leinen 140 cm                    | 1 | 1400 | 500 | roter Leinen
            1/2 m roter Leinen, 140 breit                       | 1 | 1400 | 500 | roter Leinen
            media yarda de lino rojo 50 pulgadas                | 1 | 1270 | 457 | lino rojo
            medio metro de lino rojo, ancho 140                 | 1 | 1400 | 500 | lino rojo
            붉은 리넨 반 마 50인치                              | 1 | 1270 | 457 | 붉은 리넨
            붉은 리넨 반 마, 폭 110                             | 1 | 1100 | 457 | 붉은 리넨
            赤いリネン 半ヤード 50インチ幅                      | 1 | 1270 | 457 | 赤いリネン
            赤いリネン 半メートル 幅110                         | 1 | 1100 | 500 | 赤いリネン
            帯状の麻5×60cm 四本                                 | 4 | 50 | 600 | 帯状の麻
            """)
    void a_line_says_how_many_how_large_and_of_what(String line, int count, int width, int length, String name) {
        SpokenPieces said = heard(line);

        assertThat(said.name()).as(LineWords.english(line)).isEqualTo(name);
        assertThat(said.count()).as(LineWords.english(line)).isEqualTo(count);
        assertThat(said.size().width()).isEqualTo(Length.mm(width));
        assertThat((said.size().height().nm() + 500_000) / 1_000_000).isEqualTo(length);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lin 10 x 20 cm, avec endroit, non lavé, sans sens  | RIGHT | ANY | NO
            lin réversible 10 x 20 cm, avec un sens, lavé      | SAME | LENGTHWISE | YES
            Leinen 10 x 20 cm, beidseitig gleich, ungewaschen, mit Strich | SAME | LENGTHWISE | NO
            Leinen 10 x 20 cm, einseitig, gewaschen, ohne Strich | RIGHT | ANY | YES
            lino 10 x 20 cm, sin revés, sin lavar, con pelo    | SAME | LENGTHWISE | NO
            lino 10 x 20 cm, con derecho, lavado, sin pelo     | RIGHT | ANY | YES
            리넨 10 x 20 cm, 양면, 세탁 안 함, 결 있음          | SAME | LENGTHWISE | NO
            리넨 10 x 20 cm, 겉면 있음, 빤, 결 없음             | RIGHT | ANY | YES
            麻10×20cm、両面、水通し前、方向あり                  | SAME | LENGTHWISE | NO
            麻10×20cm、表裏あり、水通し済み、方向なし            | RIGHT | ANY | YES
            """)
    void what_is_said_of_the_cloth_is_heard(String line, String faces, String nap, String washed) {
        SpokenPieces said = heard(line);

        assertThat(said.faces().map(Enum::name)).as(LineWords.english(line)).contains(faces);
        assertThat(said.nap().map(Enum::name)).as(LineWords.english(line)).contains(nap);
        assertThat(said.washed().name()).as(LineWords.english(line)).isEqualTo(washed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12 green print 4 x 8",
                "a strip of linen 2x30",
                "once loved curtain 10 x 12",
                "elf print 4 x 8 in",
                "6 in square oat",
                "five pieces of Grandma's curtain 10x12",
                "4 large roses 4 x 8 in",
                "two yards of 44 in pale linen",
                "oat, 3 in stock, 4 x 8",
                "M & S cotton 4 x 8",
                "denim 44 in wide, 2 yd long"
            })
    void an_english_line_stays_as_it_is(String line) {
        assertThat(LineWords.english(line)).isEqualTo(line);
    }

    /** "Ein Paar" are two, "ein paar" are some. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ein paar Reste 10 x 10 cm | ein paar Reste
            """)
    void some_is_no_number(String line, String name) {
        assertThat(heard(line).name()).isEqualTo(name);
        assertThat(heard(line).count()).isEqualTo(1);
        assertThat(heard(line).size()).isEqualTo(Size.square(Length.mm(100)));
    }
}
