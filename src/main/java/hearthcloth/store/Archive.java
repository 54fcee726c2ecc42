package hearthcloth.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.measure.Length;
import hearthcloth.stash.Piece;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Everything in one file: a ZIP with {@code hearthcloth.json} (format and version), {@code stash.json}, {@code
 * swatches.json} and one {@code cloth-N.json} a cloth, all UTF-8. Reading knows no file names but these and unfolds no
 * more than {@link #MOST_BYTES}, so that an archive can neither write elsewhere nor swell.
 */
public record Archive(List<Piece> pieces, Map<String, SwatchBook.Swatch> swatches, List<Kept> cloths) {

    /** Unfolded, all entries together. */
    static final long MOST_BYTES = 256L << 20;

    private static final int MOST_ENTRIES = 5_000;
    private static final String FORMAT = "hearthcloth-archive";
    private static final String FRONT = "hearthcloth.json";

    /** A cloth in an archive. */
    public record Kept(String id, String name, ClothDocument document) {}

    public Archive {
        pieces = List.copyOf(pieces);
        swatches = Map.copyOf(swatches);
        cloths = List.copyOf(cloths);
    }

    /** What lies in the store. */
    public static Archive of(Store store) {
        Map<String, SwatchBook.Swatch> swatches = new TreeMap<>();
        store.swatches()
                .across()
                .keySet()
                .forEach(fabric -> store.swatches().find(fabric).ifPresent(found -> swatches.put(fabric, found)));
        List<Kept> cloths = store.cloths().all().stream()
                .map(cloth -> new Kept(cloth.id(), cloth.name(), cloth.document()))
                .toList();
        return new Archive(store.stash().whole().pieces(), swatches, cloths);
    }

    /** The ZIP file. */
    public byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            write(
                    zip,
                    FRONT,
                    Codec.object().put("format", FORMAT).put("version", 1).toString());
            write(zip, "stash.json", Codec.list(pieces, Codec::piece).toString());
            ObjectNode pictures = Codec.object();
            new TreeMap<>(swatches)
                    .forEach((fabric, swatch) -> pictures.putObject(fabric)
                            .put("kind", swatch.kind())
                            .put("picture", swatch.picture())
                            .put("across", swatch.across().nm()));
            write(zip, "swatches.json", pictures.toString());
            for (int i = 0; i < cloths.size(); i++) {
                Kept kept = cloths.get(i);
                ObjectNode node = Codec.object().put("id", kept.id()).put("name", kept.name());
                node.put("document", kept.document().text());
                write(zip, "cloth-" + (i + 1) + ".json", node.toString());
            }
        } catch (IOException e) {
            throw new StoreException("The archive could not be written.", e);
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
     * @throws StoreException in words, where it is not ours, damaged or too large
     */
    public static Archive read(byte[] file) {
        Map<String, byte[]> entries = entries(file);
        try {
            JsonNode front = json(entries, FRONT);
            if (!front.path("format").asText().equals(FORMAT)
                    || front.path("version").asInt() != 1) {
                throw new StoreException("This file is no archive of Hearthcloth, or of a newer one.");
            }
            List<Piece> pieces = Codec.list(json(entries, "stash.json"), Codec::piece);
            Map<String, SwatchBook.Swatch> swatches = new TreeMap<>();
            json(entries, "swatches.json")
                    .properties()
                    .forEach(entry -> swatches.put(entry.getKey(), swatch(entry.getValue())));
            List<Kept> cloths = new ArrayList<>();
            for (String name : entries.keySet()) {
                if (name.matches("cloth-\\d{1,5}\\.json")) {
                    JsonNode node = json(entries, name);
                    cloths.add(new Kept(
                            id(Codec.field(node, "id").asText()),
                            Codec.field(node, "name").asText(),
                            ClothDocument.read(Codec.field(node, "document").asText())));
                }
            }
            return new Archive(pieces, swatches, cloths);
        } catch (IllegalArgumentException | JsonProcessingException e) {
            throw new StoreException("This archive is damaged; nothing was taken from it.", e);
        }
    }

    private static String id(String id) {
        if (!id.matches("[\\w-]{1,60}")) {
            throw new IllegalArgumentException("a cloth's id is letters and digits");
        }
        return id;
    }

    private static SwatchBook.Swatch swatch(JsonNode node) {
        String kind = Codec.field(node, "kind").asText();
        if (!kind.matches("image/(jpeg|png)")) {
            throw new IllegalArgumentException("a swatch is a JPEG or PNG");
        }
        return new SwatchBook.Swatch(
                kind,
                Codec.field(node, "picture").asText(),
                new Length(Codec.field(node, "across").longValue()));
    }

    private static JsonNode json(Map<String, byte[]> entries, String name) throws JsonProcessingException {
        byte[] bytes = entries.get(name);
        if (bytes == null) {
            throw new StoreException("This file is no archive of Hearthcloth: it lacks " + name + ".");
        }
        return Codec.JSON.readTree(new String(bytes, StandardCharsets.UTF_8));
    }

    private static Map<String, byte[]> entries(byte[] file) {
        Map<String, byte[]> entries = new TreeMap<>();
        long left = MOST_BYTES;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] bytes = zip.readNBytes((int) Math.min(left + 1, Integer.MAX_VALUE - 8));
                left -= bytes.length;
                if (left < 0 || entries.size() == MOST_ENTRIES) {
                    throw new StoreException("This archive holds more than a workroom can; nothing was taken from it.");
                }
                entries.put(entry.getName(), bytes);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new StoreException("This archive is damaged; nothing was taken from it.", e);
        }
        return entries;
    }

    /**
     * Lays everything into the store. Pieces come as one undoable change, with numbers of their own; a cloth that is
     * there already under the same id is left as it is.
     *
     * @param instead true where what lies in the stash is to be replaced, false where the pieces are added
     * @return how many cloths came
     */
    public int into(Store store, boolean instead) {
        List<Piece> gone = instead ? store.stash().whole().pieces() : List.of();
        int next = store.stash().nextPiece();
        List<Piece> come = new ArrayList<>();
        for (Piece piece : pieces) {
            come.add(new Piece(String.valueOf(next), piece.fabric(), piece.size(), piece.washed(), next));
            next++;
        }
        if (!gone.isEmpty() || !come.isEmpty()) {
            store.stash().edit(new StashEdit("archive brought in", gone, come));
        }
        swatches.forEach((fabric, swatch) -> store.swatches().keep(fabric, swatch));
        int came = 0;
        for (Kept kept : cloths) {
            if (store.cloths().find(kept.id()).isEmpty()) {
                store.cloths().keep(kept.id(), kept.name(), kept.document());
                came++;
            }
        }
        return came;
    }
}
