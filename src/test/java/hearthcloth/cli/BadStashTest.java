package hearthcloth.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is handed in as a stash, the answer is a sentence with a mend, exit code 2 and nothing written. */
class BadStashTest {

    @TempDir
    private Path folder = Path.of("");

    private Path stash() {
        return folder.resolve("stash.csv");
    }

    private Typed plan(byte[] content) throws IOException {
        Files.write(stash(), content);
        return plan();
    }

    private Typed plan() {
        return Typed.words(
                "plan", stash().toString(), "--out", folder.resolve("out").toString());
    }

    @AfterEach
    void nothing_is_written() throws IOException {
        try (var entries = Files.list(folder)) {
            assertThat(entries.map(entry -> String.valueOf(entry.getFileName())))
                    .isSubsetOf("stash.csv");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kelp,6 1/q in,20 in | line 3, width | write in, cm, mm",
                "kelp,-6 in,20 in | line 3, width | zero or more",
                "kelp,0 cm,20 in | line 3, width | above zero",
                "kelp,6 in,10 km | line 3, length | write in, cm, mm",
                "kelp,6 in,10000 m | line 3, length | check the number and its unit",
                "kelp,6 in,200 m | line 3, length | check the number and its unit",
                "kelp,6 in | line 3, length | write one such as",
                ",6 in,20 in | line 3, fabric | write what you call it",
                "kelp,6,20 | line 3 | --unit"
            })
    void a_malformed_line_is_named_with_its_column_and_a_mend(String line, String where, String mend)
            throws IOException {
        plan(("fabric,width,length\nfog,6 in,20 in\n" + line).getBytes(StandardCharsets.UTF_8))
                .refused("stash.csv cannot be used", where, mend);
    }

    @Test
    void all_malformed_lines_are_told_at_once() throws IOException {
        Typed typed = plan(("fabric,width,length\n" + "kelp,wide,9 in\n".repeat(57)).getBytes(StandardCharsets.UTF_8));
        typed.refused("line 2, width", "line 21, width", "and 37 more");
        assertThat(typed.err().lines()).hasSize(22);
    }

    @Test
    void no_file_or_a_folder() throws IOException {
        plan().refused("There is no file", "check its name");
        Files.createDirectory(stash());
        plan().refused("is a folder", "give the CSV file inside it");
        Files.delete(stash());
    }

    @Test
    void an_empty_file_blank_lines_or_a_header_alone() throws IOException {
        plan(new byte[0]).refused("is empty", "fabric,width,length");
        plan("\r\n\r\n".getBytes(StandardCharsets.UTF_8)).refused("is empty");
        plan("fabric,width,length\n".getBytes(StandardCharsets.UTF_8)).refused("no piece follows");
    }

    @Test
    void a_file_of_fifty_megabytes_is_refused_before_it_is_read() throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(stash().toFile(), "rw")) {
            file.setLength(50L << 20);
        }
        plan().refused("larger than 16 MB");
        Typed.withInput(
                        new byte[(16 << 20) + 1],
                        "plan",
                        "-",
                        "--out",
                        folder.resolve("out").toString())
                .refused("standard input is larger than 16 MB");
    }

    @Test
    void sixteen_megabytes_of_nonsense_are_survived() throws IOException {
        for (String unit : new String[] {",", "\"", "x\n"}) {
            byte[] text = unit.repeat((15 << 20) / unit.length()).getBytes(StandardCharsets.UTF_8);
            Typed typed = plan(text);
            typed.refused("stash.csv cannot be used as it is");
            assertThat(typed.err()).hasSizeLessThan(20_000);
        }
    }

    @Test
    void a_binary_file() throws IOException {
        byte[] noise = new byte[10_000];
        for (long seed = 1; seed <= 20; seed++) {
            new Random(seed).nextBytes(noise);
            plan(noise).refused("save the table as CSV");
        }
        plan(new byte[] {'P', 'K', 3, 4, 20, 0}).refused("is a workbook or an archive");
        plan("fabric,width\n\0".getBytes(StandardCharsets.UTF_8)).refused("line 2", "not text");
    }

    @Test
    void text_that_is_not_utf_8() throws IOException {
        String text = "fabric,width,length\nkelp,1 in,1 in\nséaweed,6 in,20 in";
        plan(text.getBytes(StandardCharsets.ISO_8859_1)).refused("not UTF-8", "line 3", "save the table as CSV");
        plan(text.getBytes(StandardCharsets.UTF_16)).refused("UTF-16", "save the table as CSV");
        plan(text.getBytes(Charset.forName("UTF-16LE"))).refused("save the table as CSV");
    }

    @Test
    void control_characters_never_reach_the_terminal() throws IOException {
        plan("fabric,width,length\nkelp,\u001b[2J\u0007,9 in".getBytes(StandardCharsets.UTF_8))
                .refused("line 2, width");
    }
}
