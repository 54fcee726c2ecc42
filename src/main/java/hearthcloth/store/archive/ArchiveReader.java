package hearthcloth.store.archive;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Piece;
import hearthcloth.stash.StashFile;
import hearthcloth.store.SwatchBook;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;

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

    private static final Sentence DAMAGED = StoringSentences.archive("DAMAGED");

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
                    throw new StoreException(StoringSentences.archive("LARGE"));
                }
                require(entries.put(entry.getName(), bytes) == null);
            }
        }
        return entries;
    }

    private Archive archive() {
        Archive.Front front = Json.read(text(Archive.FRONT), Archive.Front.class);
        if (!Archive.FORMAT.equals(front.format())) {
            throw new StoreException(StoringSentences.archive("NONE"));
        }
        int version = front.version() == null ? Integer.MAX_VALUE : front.version();
        if (version < 1 || version > Archive.VERSION) {
            throw new StoreException(StoringSentences.archive("NEWER"));
        }
        List<Piece> pieces = pieces();
        Map<String, SwatchBook.Swatch> swatches = new TreeMap<>();
        Json.map(text("swatches.json"), SwatchBook.Swatch.class)
                .forEach((fabric, swatch) -> swatches.put(word(fabric), checked(swatch)));
        List<Archive.Kept> cloths = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 1; entries.containsKey("cloth-" + i + ".json"); i++) {
            Archive.Kept kept = cloth(Json.read(text("cloth-" + i + ".json"), Archive.ClothEntry.class));
            require(ids.add(kept.id()));
            cloths.add(kept);
        }
        // A file that broke off in the middle lacks what its front counts.
        require(Integer.valueOf(pieces.size()).equals(front.pieces()));
        require(Integer.valueOf(cloths.size()).equals(front.cloths()));
        Set<String> aside = version < Archive.WITH_ASIDE ? Set.of() : aside(pieces);
        return new Archive(pieces, aside, swatches, cloths);
    }

    private Set<String> aside(List<Piece> pieces) {
        List<String> aside = Json.list(text("aside.json"), String.class);
        Set<String> ids = pieces.stream().map(Piece::id).collect(Collectors.toSet());
        require(ids.containsAll(aside));
        return Set.copyOf(new HashSet<>(aside));
    }

    private List<Piece> pieces() {
        List<Piece> pieces = Json.list(text("stash.json"), Piece.class);
        if (pieces.size() > StashFile.MOST_PIECES) {
            throw new StoreException(StoringSentences.archive("PIECES"));
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

    /** A cloth that came from elsewhere, looked at before anything is kept of it. */
    static Archive.Kept cloth(Archive.ClothEntry entry) {
        require(entry.id().matches("[\\w-]{0,40}\\w"));
        Project document = KeptCloth.read(entry.document());
        Design design = document.design();
        require(design.layout().courses().size() <= MOST_BARS
                && design.scheme().bars().size() == design.layout().courses().size());
        require(design.making().margins().mark().isPositive());
        fits(DesignFit.unfitted(design).finished());
        document.plan().ifPresent(ArchiveReader::planned);
        require(document.life().uses() >= 0);
        require(Optional.ofNullable(document.life().purpose()).stream().allMatch(Purpose::isReadable));
        require(Optional.ofNullable(document.life().keepsake()).stream().allMatch(Keepsake::isReadable));
        return new Archive.Kept(entry.id(), word(entry.name()), document, portrait(entry.portrait()));
    }

    private static String portrait(@Nullable String given) {
        if (given == null || given.isEmpty()) {
            return "";
        }
        require(begins(Base64.getDecoder().decode(given), 0xff, 0xd8, 0xff));
        return given;
    }

    private static void planned(Plan plan) {
        plan.checked().cuts().forEach(cut -> fits(cut.piece().size()));
    }

    private static SwatchBook.Swatch checked(SwatchBook.Swatch swatch) {
        byte[] bytes = Base64.getDecoder().decode(swatch.picture());
        boolean jpeg = swatch.kind().equals("image/jpeg") && begins(bytes, 0xff, 0xd8, 0xff);
        boolean png = swatch.kind().equals("image/png") && begins(bytes, 0x89, 'P', 'N', 'G');
        require(jpeg || png);
        fits(Size.square(swatch.across()));
        return swatch;
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

    private String text(String name) {
        byte[] bytes = entries.get(name);
        if (bytes == null) {
            throw new StoreException(StoringSentences.archiveLacks(Argument.text(name)));
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void require(boolean holds) {
        if (!holds) {
            throw new StoreException(DAMAGED);
        }
    }
}
