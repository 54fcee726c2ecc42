package hearthcloth.store.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.store.SwatchBook;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.DesignCodec;
import hearthcloth.store.json.StoreException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Reads an archive without trusting it, whoever made it. Only entries with known names are read, and none is written to
 * disk, so that a name cannot lead anywhere; decompression stops at {@link #MOST_BYTES}. Every value is built by the
 * same constructors as the workroom's own and every plan is checked, so that whatever is accepted can be shown, cut and
 * sewn.
 */
public final class ArchiveReader {

    /** The most bytes after decompression, all entries together. */
    public static final long MOST_BYTES = 128L << 20;

    private static final int MOST_ENTRIES = 5_000;
    private static final int MOST_BARS = 1_000;
    private static final int LONGEST_WORD = 500;

    /** The longest length that is accepted, for pieces and cloths. */
    private static final Length LONGEST = Length.of(100, Unit.METRE);

    private static final String DAMAGED = "This archive is damaged; nothing was taken from it.";

    private final Map<String, byte[]> entries;

    private ArchiveReader(Map<String, byte[]> entries) {
        this.entries = entries;
    }

    static Archive read(byte[] file) {
        try {
            return new ArchiveReader(unfolded(file)).archive();
        } catch (StoreException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            // Whatever does not fit, wherever it is noticed: one answer, and nothing was kept yet.
            throw new StoreException(DAMAGED, e);
        }
    }

    private static Map<String, byte[]> unfolded(byte[] file) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        long left = MOST_BYTES;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] bytes = zip.readNBytes((int) (left + 1));
                left -= bytes.length;
                if (left < 0 || entries.size() == MOST_ENTRIES) {
                    throw new StoreException("This archive holds more than a workroom can; nothing was taken from it.");
                }
                require(entries.put(entry.getName(), bytes) == null);
            }
        }
        return entries;
    }

    private Archive archive() throws JsonProcessingException {
        JsonNode front = json(Archive.FRONT);
        if (!front.path("format").asText().equals(Archive.FORMAT)) {
            throw new StoreException("This file is no archive of Hearthcloth.");
        }
        if (front.path("version").asInt() != Archive.VERSION) {
            throw new StoreException("This archive is of a newer Hearthcloth; nothing was taken from it.");
        }
        List<Piece> pieces = pieces();
        Map<String, SwatchBook.Swatch> swatches = new TreeMap<>();
        json("swatches.json")
                .properties()
                .forEach(entry -> swatches.put(word(entry.getKey()), swatch(entry.getValue())));
        List<Archive.Kept> cloths = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 1; entries.containsKey("cloth-" + i + ".json"); i++) {
            Archive.Kept kept = cloth(json("cloth-" + i + ".json"));
            require(ids.add(kept.id()));
            cloths.add(kept);
        }
        // A file that broke off in the middle lacks what its front counts.
        require(front.path("pieces").asInt(-1) == pieces.size());
        require(front.path("cloths").asInt(-1) == cloths.size());
        return new Archive(pieces, swatches, cloths);
    }

    private List<Piece> pieces() throws JsonProcessingException {
        List<Piece> pieces = DesignCodec.list(json("stash.json"), DesignCodec::piece);
        if (pieces.size() > StashFile.MOST_PIECES) {
            throw new StoreException("This archive holds more pieces than a stash can; nothing was taken from it.");
        }
        Set<String> ids = new HashSet<>();
        for (Piece piece : pieces) {
            require(piece.id().matches("[\\w.-]{1,40}") && ids.add(piece.id()));
            require(piece.row() >= 0 && piece.row() < Integer.MAX_VALUE / 2);
            word(piece.fabric().name());
            fits(piece.size());
        }
        return pieces;
    }

    private static Archive.Kept cloth(JsonNode node) {
        String id = DesignCodec.field(node, "id").asText();
        require(id.matches("[\\w-]{0,40}\\w"));
        ClothDocument document =
                ClothDocument.read(DesignCodec.field(node, "document").asText());
        Design design = document.design();
        require(design.layout().courses().size() <= MOST_BARS
                && design.scheme().bars().size() == design.layout().courses().size());
        require(design.making().margins().mark().isPositive());
        fits(DesignFit.unfitted(design).finished());
        document.plan().ifPresent(ArchiveReader::planned);
        require(document.life().uses() >= 0);
        return new Archive.Kept(id, word(DesignCodec.field(node, "name").asText()), document);
    }

    private static void planned(Plan plan) {
        plan.checked().cuts().forEach(cut -> fits(cut.piece().size()));
    }

    private static SwatchBook.Swatch swatch(JsonNode node) {
        String kind = DesignCodec.field(node, "kind").asText();
        String picture = DesignCodec.field(node, "picture").asText();
        byte[] bytes = Base64.getDecoder().decode(picture);
        boolean jpeg = kind.equals("image/jpeg") && begins(bytes, 0xff, 0xd8, 0xff);
        boolean png = kind.equals("image/png") && begins(bytes, 0x89, 'P', 'N', 'G');
        require(jpeg || png);
        Length across = DesignCodec.length(node, "across");
        fits(Size.square(across));
        return new SwatchBook.Swatch(kind, picture, across);
    }

    private static boolean begins(byte[] bytes, int... signs) {
        for (int i = 0; i < signs.length; i++) {
            if (i >= bytes.length || Byte.toUnsignedInt(bytes[i]) != signs[i]) {
                return false;
            }
        }
        return true;
    }

    private static void fits(Size size) {
        require(size.width().isPositive() && size.height().isPositive());
        require(!size.width().isMoreThan(LONGEST) && !size.height().isMoreThan(LONGEST));
    }

    /** A name that can be shown on one line. */
    private static String word(String text) {
        require(!text.isBlank() && text.length() <= LONGEST_WORD);
        require(text.codePoints().noneMatch(Character::isISOControl));
        return text;
    }

    private JsonNode json(String name) throws JsonProcessingException {
        byte[] bytes = entries.get(name);
        if (bytes == null) {
            throw new StoreException("This file is no whole archive of Hearthcloth: it lacks " + name + ".");
        }
        return DesignCodec.JSON.readTree(new String(bytes, StandardCharsets.UTF_8));
    }

    private static void require(boolean holds) {
        if (!holds) {
            throw new StoreException(DAMAGED);
        }
    }
}
