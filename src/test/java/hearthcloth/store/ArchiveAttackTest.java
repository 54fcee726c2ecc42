package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.store.archive.Archive;
import hearthcloth.store.archive.ArchiveReader;
import hearthcloth.store.archive.ArchiveTest;
import hearthcloth.store.json.StoreException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archives made to do harm, or harmed on the way: refused in a sentence, before anything is changed. */
class ArchiveAttackTest {

    @TempDir
    Path folder;

    private byte[] good = {};

    @BeforeEach
    void pack() {
        good = Archive.of(ArchiveTest.filled(Store.open(folder.resolve("one.db"), Clock.systemUTC())))
                .bytes();
    }

    private static Map<String, byte[]> unzipped(byte[] file) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return entries;
    }

    private static byte[] zipped(Map<String, byte[]> entries) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private byte[] changed(String entry, UnaryOperator<String> change) {
        Map<String, byte[]> entries = unzipped(good);
        String was = new String(entries.getOrDefault(entry, new byte[0]), StandardCharsets.UTF_8);
        String now = change.apply(was);
        assertThat(now).as("the attack changes something").isNotEqualTo(was);
        entries.put(entry, now.getBytes(StandardCharsets.UTF_8));
        return zipped(entries);
    }

    private static void refuses(byte[] file, String words) {
        assertThatThrownBy(() -> Archive.read(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(words);
    }

    @Test
    void what_is_no_archive_of_ours_is_told_so() {
        refuses(new byte[0], "no whole archive");
        refuses("kelp".getBytes(StandardCharsets.UTF_8), "no whole archive");
        refuses(zipped(Map.of("readme.txt", new byte[3])), "no whole archive");
        refuses(changed("hearthcloth.json", text -> text.replace("hearthcloth-archive", "other")), "no archive");
        refuses(changed("hearthcloth.json", text -> text.replace("\"version\":3", "\"version\":4")), "newer");
    }

    @Test
    void a_file_that_broke_off_anywhere_is_refused_or_was_whole_already() {
        Archive whole = Archive.read(good);
        for (int length = 0; length < good.length; length += 97) {
            byte[] broken = Arrays.copyOf(good, length);
            try {
                assertThat(Archive.read(broken)).isEqualTo(whole);
            } catch (StoreException e) {
                assertThat(e).hasMessageMatching(".*(damaged|no whole archive).*");
            }
        }
        Map<String, byte[]> fewer = unzipped(good);
        fewer.remove("cloth-2.json");
        refuses(zipped(fewer), "damaged");
    }

    @Test
    void flipped_bits_are_noticed_or_harmless() {
        Archive whole = Archive.read(good);
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            byte[] flipped = good.clone();
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
            try {
                assertThat(Archive.read(flipped)).isEqualTo(whole);
            } catch (StoreException e) {
                assertThat(e.getMessage()).isNotBlank();
            }
        }
    }

    @Test
    void names_that_lead_elsewhere_lead_nowhere() throws IOException {
        Map<String, byte[]> entries = unzipped(good);
        for (String name :
                new String[] {"../../evil.txt", "/tmp/hearthcloth-evil", "C:\\evil", "a/../../b", "cloth-9.json/"}) {
            entries.put(name, "evil".getBytes(StandardCharsets.UTF_8));
        }
        assertThat(Archive.read(zipped(entries))).isEqualTo(Archive.read(good));
        try (Stream<Path> files = Files.walk(folder.getParent(), 2)) {
            assertThat(files.map(file -> String.valueOf(file.getFileName()))).noneMatch(name -> name.contains("evil"));
        }
    }

    @Test
    void what_swells_is_stopped() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("stash.json"));
            byte[] nothing = new byte[1 << 20];
            for (long written = 0; written <= ArchiveReader.MOST_BYTES; written += nothing.length) {
                zip.write(nothing);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(out.size()).isLessThan(1 << 20);
        refuses(out.toByteArray(), "holds more than");
    }

    @Test
    void more_entries_than_there_can_be_are_refused() {
        Map<String, byte[]> entries = unzipped(good);
        for (int i = 0; i < 6_000; i++) {
            entries.put("n" + i, new byte[0]);
        }
        refuses(zipped(entries), "holds more than");
    }

    @Test
    void values_that_cannot_be_are_refused() {
        Map<String, UnaryOperator<String>> attacks = new LinkedHashMap<>();
        attacks.put("negative", text -> text.replaceFirst("\"width\":\\d+", "\"width\":-1"));
        attacks.put("endless", text -> text.replaceFirst("\"width\":\\d+", "\"width\":9223372036854775807"));
        attacks.put("same number", text -> text.replaceFirst("\"id\":\"2\"", "\"id\":\"3\""));
        attacks.put("odd id", text -> text.replaceFirst("\"id\":\"2\"", "\"id\":\"<script>\""));
        attacks.put("no fabric", text -> text.replaceFirst("\"name\":\"\\w+\"", "\"name\":\" \""));
        attacks.put("no colour", text -> text.replaceFirst("#\\w{6}", "red;}"));
        attacks.put("no JSON", text -> text.substring(5));
        attacks.put("deep", text -> "[".repeat(200_000));
        attacks.put("nothing", text -> "null");
        attacks.forEach((what, attack) -> assertThatThrownBy(() -> Archive.read(changed("stash.json", attack)))
                .as(what)
                .isInstanceOf(StoreException.class));
    }

    @Test
    void cloths_that_cannot_be_cut_or_sewn_are_refused() {
        Map<String, UnaryOperator<String>> attacks = new LinkedHashMap<>();
        attacks.put(
                "patch not cut",
                text -> text.replaceFirst("\\\\\"patch\\\\\":\\\\\"hearth", "\\\\\"patch\\\\\":\\\\\"1Z"));
        attacks.put("id", text -> text.replaceFirst("\"id\":\"", "\"id\":\"../"));
        attacks.put("stage", text -> text.replace("DESIGNED", "EATEN"));
        attacks.put("ruler", text -> text.replaceFirst("mark\\\\\":\\d+", "mark\\\\\":0"));
        attacks.put(
                "fewer bars",
                text -> text.replaceFirst("\\{\\\\\"side\\\\\":\\\\\"\\w+\\\\\",\\\\\"width\\\\\":\\d+},", ""));
        attacks.put("deep work", text -> text.replaceFirst("\\\\\"work\\\\\":\\\\\"", "$0" + "(".repeat(200_000)));
        attacks.forEach((what, attack) -> assertThatThrownBy(() -> Archive.read(changed("cloth-1.json", attack)))
                .as(what)
                .isInstanceOf(StoreException.class));
        refuses(changed("swatches.json", text -> text.replace("image/jpeg", "text/html")), "damaged");
        refuses(changed("swatches.json", text -> text.replace("/9j/", "PGI+")), "damaged");
    }
}
