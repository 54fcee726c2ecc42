package hearthcloth.guideline.file;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.guideline.Guideline;
import hearthcloth.json.JsonParser;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link SewingFields}: how a cloth is sewn goes into a file and comes out of it the same. */
class SewingFieldsTest {

    private final List<Sentence> said = new ArrayList<>();

    private List<String> faults() {
        return said.stream().map(Sentence::english).toList();
    }

    private Guideline.SewingRule read(Ruler ruler, String json) {
        return new SewingFields(ruler).read(FieldReader.of(JsonParser.read(json), said));
    }

    @Test
    void what_is_left_out_is_what_is_usual_in_the_unit() {
        Guideline.SewingRule metric = read(Ruler.MILLIMETRES, "{}");
        assertThat(metric.making()).isEqualTo(Making.metric());
        assertThat(metric.joins()).isEqualTo(PiecingRules.metric());
        Guideline.SewingRule inches = read(Ruler.EIGHTHS, "{}");
        assertThat(inches.making()).isEqualTo(Making.inches());
        assertThat(inches.joins()).isEqualTo(PiecingRules.inches());
        assertThat(faults()).isEmpty();
    }

    /** Seed 4: two hundred ways of sewing with measures on no mark of any ruler. */
    @ParameterizedTest
    @EnumSource(Ruler.class)
    void every_way_of_sewing_comes_back_as_it_was_written(Ruler ruler) {
        Random chance = new Random(4);
        for (int i = 0; i < 200; i++) {
            Guideline.SewingRule sewing = new Guideline.SewingRule(
                    making(chance, ruler),
                    new PiecingRules(length(chance, 900), length(chance, 900), chance.nextInt(41)));
            JsonValue.Building file = JsonValue.object();
            new SewingFields(ruler).write(sewing, file);
            String written = JsonWriter.write(file.done());
            assertThat(read(ruler, written)).as(written).isEqualTo(sewing);
            assertThat(faults()).isEmpty();
        }
    }

    private static Making making(Random chance, Ruler ruler) {
        List<SeamKind> table = SeamKind.table();
        SeamKind kind = table.get(chance.nextInt(table.size()));
        if (chance.nextBoolean()) {
            Length narrow = length(chance, 40);
            Length wide = narrow.plus(length(chance, 40));
            kind = kind.build() == SeamKind.Build.FELLED
                    ? new SeamKind(
                            kind.name(),
                            kind.build(),
                            narrow,
                            wide,
                            SeamKind.felled(narrow, wide).band())
                    : new SeamKind(kind.name(), kind.build(), narrow, wide, length(chance, 40));
        }
        Hem.Corner corner = chance.nextBoolean() ? Hem.Corner.SQUARE : Hem.Corner.MITRED;
        Making usual = ruler.isMetric() ? Making.metric() : Making.inches();
        return usual.withSeam(kind)
                .withHem(new Hem(length(chance, 90), length(chance, 90), corner))
                .withLeeway(length(chance, 90))
                .withTrim(length(chance, 90))
                .felledOn(chance.nextBoolean() ? Face.FRONT : Face.BACK);
    }

    private static Length length(Random chance, int mostMm) {
        return new Length(1 + (long) (chance.nextDouble() * mostMm * 1_000_000));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"leeway":"11 cm"}| "leeway": "11 cm" will not do; write a length of at most 10 cm.
            {"trim":"4,5 in"}| "trim": "4,5 in" will not do; write a length of at most 10 cm.
            {"hem":{"first":"0 cm"}}| "hem.first": "0 cm" will not do; write more than nothing and at most 10 cm.
            {"hem":{"corner":"round"}}| "hem.corner": "round" will not do; write square or mitred.
            {"fell":"inside"}| "fell": "inside" will not do; write front or back.
            {"joins":{"most":41}}| "joins.most": "41" will not do; write a whole number from 0 to 40.
            {"joins":{"leastPiece":"2 m"}}| "joins.leastPiece": "2 m" will not do; write more than nothing and at most 100 cm.
            {"seam":{"narrow":"2 cm","wide":"1 cm"}}| "seam.wide": the wide allowance wraps round the narrow one, so it must be the wider one.
            """)
    void what_will_not_do_is_told_with_what_to_write(String json, String sentence) {
        read(Ruler.MILLIMETRES, json);
        assertThat(faults()).containsExactly(sentence);
    }

    /** The kind is left out, so it is the usual one; what is said of it counts all the same. */
    @Test
    void allowances_count_where_the_kind_is_left_out() {
        SeamKind seam = read(Ruler.MILLIMETRES, "{\"seam\":{\"wide\":\"14 mm\"}}")
                .making()
                .seam();
        assertThat(seam.wide()).isEqualTo(Length.mm(14));
        assertThat(seam.narrow()).isEqualTo(Making.metric().seam().narrow());
        assertThat(read(Ruler.MILLIMETRES, "{\"seam\":{\"narrow\":\"4 mm\"}}")
                        .making()
                        .seam()
                        .narrow())
                .isEqualTo(Length.mm(4));
        assertThat(faults()).isEmpty();
    }

    @Test
    void a_seam_nobody_knows_names_those_that_are_known() {
        read(Ruler.MILLIMETRES, "{\"seam\":{\"kind\":\"glued\"}}");
        assertThat(faults()).hasSize(1);
        assertThat(faults().get(0)).contains("\"glued\" is not a seam we know; there are ");
        SeamKind.table().forEach(kind -> assertThat(faults().get(0)).contains(kind.name()));
    }
}
