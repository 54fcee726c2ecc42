package hearthcloth.store.archive;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.store.SwatchBook;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * A maker's whole work in one file: a ZIP with {@code hearthcloth.json} (format, version and numbers of entries),
 * {@code stash.json}, {@code aside.json}, {@code swatches.json} and one {@code cloth-N.json} for each cloth, all UTF-8; {@code
 * docs/archive.md} describes the format. A store that is packed and unpacked into an empty one is the same again.
 */
public record Archive(
        List<Piece> pieces, Set<String> aside, Map<String, SwatchBook.Swatch> swatches, List<Kept> cloths) {

    static final String FORMAT = "hearthcloth-archive";
    /** The first version in which a cloth may have cuts still to make that were asked for while sewing. */
    static final int VERSION = 3;

    /** The first version that holds which pieces are set aside. */
    static final int WITH_ASIDE = 2;

    static final String FRONT = "hearthcloth.json";

    /**
     * A cloth in an archive.
     *
     * @param portrait her photograph of it, a JPEG in base 64; empty where she took none
     */
    public record Kept(String id, String name, Project document, String portrait) {

        /** One without a photograph. */
        Kept(String id, String name, Project document) {
            this(id, name, document, "");
        }
    }

    /** What an archive says of itself; what it counts tells one that broke off. */
    record Front(
            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String format,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Integer version,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Integer pieces,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Integer cloths) {}

    /**
     * A cloth's entry.
     *
     * @param document as the store keeps it
     * @param portrait missing where there is no photograph
     */
    record ClothEntry(
            String id,
            String name,
            String document,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String portrait) {}

    public Archive {
        pieces = List.copyOf(pieces);
        aside = Set.copyOf(aside);
        swatches = Map.copyOf(swatches);
        cloths = List.copyOf(cloths);
    }

    /** An archive of everything in the store. */
    public static Archive of(Store store) {
        Map<String, SwatchBook.Swatch> swatches = new TreeMap<>();
        store.swatches()
                .across()
                .keySet()
                .forEach(fabric -> store.swatches().find(fabric).ifPresent(found -> swatches.put(fabric, found)));
        List<Kept> cloths = store.cloths().all().stream()
                .sorted(Comparator.comparing(SavedCloth::id))
                .map(cloth -> new Kept(cloth.id(), cloth.name(), cloth.document(), portrait(store, cloth)))
                .toList();
        List<Piece> pieces = store.stash().whole().pieces();
        Set<String> aside = pieces.stream().map(Piece::id).collect(Collectors.toCollection(HashSet::new));
        aside.retainAll(store.stash().aside());
        return new Archive(pieces, aside, swatches, cloths);
    }

    private static String portrait(Store store, SavedCloth cloth) {
        return store.portraits()
                .find(cloth.id())
                .map(Base64.getEncoder()::encodeToString)
                .orElse("");
    }

    /** The bytes of the ZIP file. */
    public byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            write(zip, FRONT, Json.text(new Front(FORMAT, VERSION, pieces.size(), cloths.size())));
            write(zip, "stash.json", Json.text(pieces));
            write(zip, "aside.json", Json.text(aside.stream().sorted().toList()));
            write(zip, "swatches.json", Json.text(new TreeMap<>(swatches)));
            for (int i = 0; i < cloths.size(); i++) {
                Kept kept = cloths.get(i);
                ClothEntry entry = new ClothEntry(
                        kept.id(),
                        kept.name(),
                        KeptCloth.text(kept.document()),
                        kept.portrait().isEmpty() ? null : kept.portrait());
                write(zip, "cloth-" + (i + 1) + ".json", Json.text(entry));
            }
        } catch (IOException e) {
            throw new StoreException(StoringSentences.archive("WRITE"), e);
        }
        return out.toByteArray();
    }

    private static void write(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    /**
     * Reads an archive.
     *
     * @throws StoreException with a sentence, where it is not ours, damaged or too large
     */
    public static Archive read(byte[] file) {
        return ArchiveReader.read(file);
    }

    /**
     * Unpacks everything into the store, or nothing where that fails. Pieces come as one change that can be undone.
     *
     * @param instead true where the archive's pieces replace those in the stash, and its cloths replace cloths with the
     *     same id; false where what is there stays as it is
     * @return how many cloths came or were changed
     */
    public int into(Store store, boolean instead, Voice voice) {
        String label = StoringSentences.archiveIn().in(voice);
        return store.asOneChange(label, () -> new ArchiveUnpacking(this, store, instead, label).lay());
    }
}
