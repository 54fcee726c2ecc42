package hearthcloth.cli.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.wish.BadInputException;
import hearthcloth.words.speech.Voice;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands read and write: {@link InputText}, {@link PhotoFile}, {@link OutputFile} and {@link ProgressLine}. */
class ShellFilesTest {

    private static final int MEGABYTE = 1_048_576;

    @TempDir
    private Path folder = Path.of("");

    private static InputStream in(byte[] bytes) {
        return new ByteArrayInputStream(bytes);
    }

    private static String typed(byte[] bytes) {
        return InputText.read("-", in(bytes));
    }

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static void refused(Runnable asked, String... said) {
        assertThatThrownBy(asked::run).isInstanceOf(BadInputException.class).hasMessageContainingAll(said);
    }

    @Test
    void text_is_read_as_it_stands_from_a_file_or_from_standard_input() throws IOException {
        byte[] text = "fabric,width\nKelp – grün,6½\r\n".getBytes(StandardCharsets.UTF_8);
        assertThat(typed(text)).isEqualTo("fabric,width\nKelp – grün,6½\r\n");
        Path file = file("a.csv", text);
        assertThat(InputText.read(file.toString(), in(new byte[0]))).isEqualTo("fabric,width\nKelp – grün,6½\r\n");
        // a lone P, or PK with letters after it, is text
        assertThat(typed("PK12".getBytes(StandardCharsets.US_ASCII))).isEqualTo("PK12");
        assertThat(typed("PK\u0003".getBytes(StandardCharsets.US_ASCII))).isEqualTo("PK\u0003");
    }

    @Test
    void what_is_no_text_is_named_with_the_line_that_holds_it() {
        refused(() -> typed(new byte[0]), "standard input is empty");
        refused(() -> typed(bytes('P', 'K', 3, 4, 0)), "workbook or an archive", "CSV (UTF-8)");
        refused(() -> typed(bytes(0xd0, 0xcf, 0x11, 0xe0, 0)), "workbook or an archive");
        refused(() -> typed(bytes(0xff, 0xfe, 'a', 0)), "UTF-16");
        refused(() -> typed(bytes(0xfe, 0xff, 0, 'a')), "UTF-16");
        refused(() -> typed(bytes('a', '\n', 0, '\n')), "line 2 holds a byte that is no letter");
        refused(() -> typed(bytes('a', '\n', '\n', 'g', 0xfc, 'n')), "not UTF-8", "line 3 holds a letter in another");
        refused(() -> typed(bytes(0xfc, '\n')), "not UTF-8", "line 1");
    }

    @Test
    void sixteen_megabytes_are_read_and_not_a_byte_more() throws IOException {
        byte[] most = new byte[16 * MEGABYTE];
        java.util.Arrays.fill(most, (byte) 'a');
        assertThat(typed(most)).hasSize(16 * MEGABYTE);
        refused(() -> typed(java.util.Arrays.copyOf(most, most.length + 1)), "larger than 16 MB");
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile hole = new RandomAccessFile(large.toFile(), "rw")) {
            hole.setLength(16L * MEGABYTE + 1);
        }
        refused(() -> InputText.read(large.toString(), in(new byte[0])), "large.csv is larger than 16 MB");
    }

    @Test
    void what_is_not_there_or_is_a_folder_is_said_with_where_you_are() {
        String here = Path.of("").toAbsolutePath().toString();
        String missing = folder.resolve("none.csv").toString();
        refused(() -> InputText.read(missing, in(new byte[0])), "There is no file " + missing, here);
        refused(() -> InputText.read(folder.toString(), in(new byte[0])), "is a folder", "stash.csv");
        refused(() -> InputText.read("a\0b", in(new byte[0])), "\"a b\" is not the name of a file");
        refused(() -> PhotoFile.read(missing, in(new byte[0])), "There is no file " + missing, here);
        refused(() -> PhotoFile.read(folder.toString(), in(new byte[0])), "is a folder; give the photograph");
        refused(() -> PhotoFile.read("a\0b", in(new byte[0])), "\"a b\" is not the name of a file");
    }

    @Test
    void a_photograph_is_read_whole_and_an_empty_one_refused() throws IOException {
        byte[] some = bytes(0xff, 0xd8, 0, 1, 2);
        assertThat(PhotoFile.read("-", in(some))).isEqualTo(some);
        assertThat(PhotoFile.read(file("a.jpg", some).toString(), in(new byte[0])))
                .isEqualTo(some);
        refused(() -> PhotoFile.read("-", in(new byte[0])), "Standard input is empty");
        String empty = file("empty.jpg", new byte[0]).toString();
        refused(() -> PhotoFile.read(empty, in(some)), empty + " is empty");
    }

    /** One byte more than the reader accepts is enough for it to refuse the photograph; the rest stays unread. */
    @Test
    void of_an_endless_photograph_no_more_is_read_than_is_needed_to_refuse_it() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 1;
            }

            @Override
            public int read(byte[] into, int from, int count) {
                return count;
            }
        };
        assertThat(PhotoFile.read("-", endless)).hasSize(80 * MEGABYTE + 1);
    }

    @Test
    void a_stream_that_breaks_off_is_said_so() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("gone");
            }

            @Override
            public int read(byte[] to, int from, int length) throws IOException {
                return read();
            }
        };
        refused(() -> InputText.read("-", broken), "could not be read to its end");
        refused(() -> PhotoFile.read("-", broken), "could not be read to its end");
    }

    @Test
    void a_file_is_written_whole_and_one_that_is_there_only_where_that_was_said() throws IOException {
        Path file = folder.resolve("a.pdf");
        OutputFile out = OutputFile.of("--out", file.toString(), ".pdf", false);
        assertThat(file).doesNotExist();
        assertThat(out.shown()).isEqualTo(file.toString());
        out.write(bytes(1, 2, 3));
        assertThat(file).hasBinaryContent(bytes(1, 2, 3));
        refused(() -> OutputFile.of("--out", file.toString(), ".pdf", false), "--out: there is a file", "--replace");
        OutputFile.of("--out", file.toString(), ".pdf", true).write(bytes(4));
        assertThat(file).hasBinaryContent(bytes(4));
        // nothing else is left beside it
        try (var entries = Files.list(folder)) {
            assertThat(entries).containsExactly(file);
        }
    }

    @Test
    void a_file_that_cannot_be_written_is_refused_before_anything_is_done() throws IOException {
        refused(() -> OutputFile.of("--picture", "a.jpg", ".png", true), "--picture: \"a.jpg\"", "ends with .png");
        refused(
                () -> OutputFile.of("--out", folder.resolve("no/a.pdf").toString(), ".pdf", true),
                "there is no folder");
        Path named = Files.createDirectory(folder.resolve("named.pdf"));
        refused(() -> OutputFile.of("--out", named.toString(), ".pdf", true), "is a folder; give a file name");
        refused(() -> OutputFile.of("--out", "a\0b.pdf", ".pdf", true), "is not the name of a file");
        Path gone = Files.createDirectory(folder.resolve("gone"));
        OutputFile out = OutputFile.of("--out", gone.resolve("a.pdf").toString(), ".pdf", false);
        Files.delete(gone);
        refused(() -> out.write(bytes(1)), "--out: ", "could not be written");
    }

    private static String shown(boolean watched, Consumer<ProgressLine> asked) {
        String before = System.getProperty("hearthcloth.watched");
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream none = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        try {
            System.setProperty("hearthcloth.watched", String.valueOf(watched));
            asked.accept(new ProgressLine(
                    new Shell(in(new byte[0]), none, new PrintStream(err, false, StandardCharsets.UTF_8)),
                    Voice.english(Ruler.MILLIMETRES)));
        } finally {
            if (before == null) {
                System.clearProperty("hearthcloth.watched");
            } else {
                System.setProperty("hearthcloth.watched", before);
            }
        }
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void progress_is_one_line_written_over_itself_and_wiped_and_nothing_where_nobody_watches() {
        PlanProgress progress = new PlanProgress(3, 24, 2, Optional.empty());
        Consumer<ProgressLine> all = line -> {
            line.show(progress);
            line.say("drawing");
            line.clear();
        };
        String said = "planning: 3 of 24 layouts tried, 2 can be made";
        assertThat(shown(true, all))
                .isEqualTo("\r" + said + " ".repeat(70 - said.length()) + "\rdrawing" + " ".repeat(63) + "\r"
                        + " ".repeat(70) + "\r");
        assertThat(shown(false, all)).isEmpty();
        // longer than the line: as it is
        assertThat(shown(true, line -> line.say("x".repeat(80)))).isEqualTo("\r" + "x".repeat(80));
    }
}
