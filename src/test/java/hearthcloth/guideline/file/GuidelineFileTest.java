package hearthcloth.guideline.file;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineWords;
import hearthcloth.words.sentence.Sentence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The guideline file: nothing is lost by writing it, and every fault in it is named with its field. */
class GuidelineFileTest {

    private static final String[] SIZES = {
        "open", "16 in", "16 x 12 in", "16 to 20 in", "for box 30 x 20 x 8 cm, errand wrap"
    };
    private static final String[] HEARTHS = {
        "open", "largest square", "30 to 40 %", "35 %", "14 in", "12 1/3 in finished"
    };
    private static final String[] BARS = {"open", "strips", "8 to 12 %", "2 to 3 in", "5 in, 4 1/2 in", "33 mm finished"
    };
    private static final String[] ROUNDS = {"open", "3", "2 to 4"};
    private static final String[] ORDERS = {"open", "round", "pairs", "two-sides"};
    private static final String[] COLOURS = {"open", "two halves", "ring by ring or frames", "one bright scrap"};
    private static final String[] MIDDLES = {"any", "favourite", "lightest", "darkest"};
    private static final String[] SEAMS = {"felled", "french", "lapped", "ssamsol"};

    static Guideline read(String text) {
        GuidelineFile.Reading reading = GuidelineFile.read(text);
        assertThat(reading).isInstanceOf(GuidelineFile.Reading.Read.class);
        return ((GuidelineFile.Reading.Read) reading).guideline();
    }

    private static List<String> faults(String text) {
        GuidelineFile.Reading reading = GuidelineFile.read(text);
        assertThat(reading).isInstanceOf(GuidelineFile.Reading.Faulty.class);
        return ((GuidelineFile.Reading.Faulty) reading)
                .said().stream().map(Sentence::english).toList();
    }

    private static String one(Random random, String[] words) {
        return words[random.nextInt(words.length)];
    }

    private static String file(String fields) {
        return "{\"format\":\"hearthcloth-guideline\",\"version\":1,\"name\":\"Tea cloth\"" + fields + "}";
    }

    /** Seed 11. */
    @Test
    void writing_and_reading_again_loses_nothing() {
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            String text = file(",\"unit\":\"" + (random.nextBoolean() ? "in" : "cm") + "\",\"size\":\""
                    + one(random, SIZES)
                    + "\",\"hearth\":\"" + one(random, HEARTHS) + "\",\"bars\":\"" + one(random, BARS)
                    + "\",\"rounds\":\""
                    + one(random, ROUNDS) + "\",\"order\":\"" + one(random, ORDERS) + "\",\"colours\":\""
                    + one(random, COLOURS) + "\",\"middle\":\"" + one(random, MIDDLES) + "\",\"seam\":{\"kind\":\""
                    + one(random, SEAMS) + "\"},\"leeway\":\"" + random.nextInt(30) + " mm\",\"joins\":{\"most\":"
                    + random.nextInt(5) + "}");
            Guideline guideline = read(text);
            String written = GuidelineFile.write(guideline);
            assertThat(read(written)).isEqualTo(guideline);
            assertThat(GuidelineFile.write(read(written))).isEqualTo(written);
            assertThat(GuidelineWords.of(guideline))
                    .hasSize(9)
                    .allMatch(line -> line.english().endsWith("."));
        }
    }

    @Test
    void a_name_alone_is_a_guideline_with_all_open() {
        Guideline guideline = read(file(""));
        assertThat(GuidelineWords.of(guideline).stream().map(line -> line.english()))
                .contains("The cloth is as large as your heap allows.", "The bars round it are as your heap has them.");
    }

    @Test
    void each_fault_is_named_with_its_field_and_the_mend() {
        assertThat(
                        faults(
                                file(
                                        ",\"hearth\":\"big\",\"rounds\":\"0\",\"order\":\"up\",\"colours\":\"pink\",\"bars\":\"3 to 2 in\","
                                                + "\"size\":7,\"middle\":\"left\",\"seam\":{\"kind\":\"glue\"},\"joins\":{\"most\":\"99\"},\"sise\":\"2\"")))
                .hasSize(9)
                .anyMatch(line -> line.startsWith("\"hearth\": ") && line.contains("largest square"))
                .anyMatch(line -> line.startsWith("\"rounds\": ") && line.contains("from 1 to 40"))
                .anyMatch(line -> line.startsWith("\"order\": ") && line.contains("round, pairs, two-sides or open"))
                .anyMatch(line -> line.startsWith("\"colours\": ") && line.contains("two halves"))
                .anyMatch(line -> line.startsWith("\"bars\": ") && line.contains("smaller measure first"))
                .anyMatch(line -> line.startsWith("\"middle\": ") && line.contains("favourite"))
                .anyMatch(line -> line.startsWith("\"seam.kind\": ") && line.contains("felled"))
                .anyMatch(line -> line.startsWith("\"joins.most\": ") && line.contains("0 to 40"))
                .anyMatch(line -> line.startsWith("\"sise\": ") && line.contains("not known"));
        assertThat(faults("{\"format\":\"other\",\"version\":2}"))
                .anyMatch(line -> line.startsWith("\"format\""))
                .anyMatch(line -> line.startsWith("\"version\""))
                .anyMatch(line -> line.startsWith("\"name\""));
        assertThat(faults("fabric,width,length\n")).singleElement().asString().contains("line 1");
        assertThat(faults("[]")).isNotEmpty();
    }

    /** Seed 3: any file cut short or with a letter changed is read or refused, never anything else. */
    @Test
    void a_damaged_file_is_read_or_refused() {
        String whole = GuidelineFile.write(read(file(",\"words\":\"<script>alert(1)</script>\"")));
        Random random = new Random(3);
        for (int i = 0; i < 2_000; i++) {
            StringBuilder text = new StringBuilder(whole);
            text.setCharAt(random.nextInt(text.length()), (char) (32 + random.nextInt(95)));
            text.setLength(1 + random.nextInt(text.length()));
            assertThat(GuidelineFile.read(text.toString())).isNotNull();
        }
    }

    @Test
    void the_example_that_comes_along_is_one() throws IOException {
        assertThat(read(Files.readString(Path.of("examples/idea.json"))).told().name())
                .isNotBlank();
    }
}
