package hearthcloth.web.stash;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Lot;
import hearthcloth.stash.Piece;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.StashAtHand;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Pieces on a table, to scale: those of one fabric stand on one foot line beside each other, the largest first, small
 * ones over one another. Packed once; a screen only says how large an inch is.
 *
 * @param tiles the fabrics' figures, once for all pieces, as SVG
 * @param has which marks occur, so that only those are explained
 */
public record StashTable(
        List<Group> groups, TableFit fit, String tiles, boolean isInGreys, boolean isMetric, Marks has) {

    /** Which marks occur on the table. */
    public record Marks(boolean slip, boolean kept, boolean right, boolean nap) {}

    /**
     * The pieces of one fabric.
     *
     * @param said what stands under its name
     */
    public record Group(String fabric, Said said, String change, List<Column> columns) {}

    /**
     * What is said of a fabric's pieces.
     *
     * @param note how many, whether there is a right side and a nap, in signs; {@code about} in words
     * @param hasColour false where its name tells none and she has chosen none yet
     */
    public record Said(String note, String about, boolean hasColour) {}

    /** Pieces over one another. */
    public record Column(List<Shown> lots) {}

    /**
     * Pieces alike, drawn once.
     *
     * @param ids the first one's id and how many there are, by which a form means them
     * @param words what they are, to be spoken
     * @param marks what lies on them
     */
    public record Shown(String ids, String size, int count, String numbers, String words, Drawn drawn, Laid marks) {

        double widthInches() {
            return drawn.widthInches;
        }

        double heightInches() {
            return drawn.heightInches;
        }
    }

    /**
     * How a piece is drawn.
     *
     * @param edge colour of the threads that stand out of its cut edges
     */
    public record Drawn(double widthInches, double heightInches, String fill, String edge, int shade) {

        /** In ems of four inches. */
        public String wide() {
            return ems(widthInches);
        }

        public String high() {
            return ems(heightInches);
        }

        /** In millimetres, in which the fabrics' figures are drawn. */
        public String box() {
            return String.format(Locale.ROOT, "0 0 %.1f %.1f", widthInches * 25.4, heightInches * 25.4);
        }

        private static String ems(double inches) {
            return String.format(Locale.ROOT, "%.3fem", inches / 4);
        }

        public boolean isUpright() {
            return widthInches * 1.5 < heightInches;
        }
    }

    /**
     * What is said of a piece on paper that lies on it.
     *
     * @param slip the cloth that counts on it, if any; without words where there is no room for them
     * @param isKept true where it is kept for something else
     */
    public record Laid(Optional<String> slip, boolean isKept, boolean hasNap) {}

    /** What stands before the name of the example's cloth, in whichever language it was laid out. */
    private static final String EXAMPLE = "^(?:Example|예시|見本|Exemple|Beispiel|Ejemplo) ?[:：] ?";

    private static final int SHADES = 5;

    /** What the line that says so takes of a page where the example lies out, in pixels. */
    private static final int EXAMPLE_LINE = 46;

    /** A piece this long, in inches, has room for a name on its slip; on a shorter one two letters of it would say nothing. */
    private static final double LEAST_FOR_WORDS = 22;

    private static boolean isExample(List<Lot> lots) {
        return lots.stream().anyMatch(lot -> ExampleMark.isOn(lot.first().id()));
    }

    static StashTable of(List<Lot> lots, StashAtHand heap, Map<String, Length> across, TableLook look, Voice voice) {
        Map<Fabric, List<Shown>> found = new LinkedHashMap<>();
        List<Fabric> fabrics =
                lots.stream().map(lot -> lot.first().fabric()).distinct().toList();
        Swatches swatches = new Swatches(fabrics, across);
        for (Lot lot : lots) {
            found.computeIfAbsent(lot.first().fabric(), fabric -> new ArrayList<>())
                    .add(shown(lot, heap, swatches, look, voice));
        }
        List<Group> groups = new ArrayList<>();
        found.forEach((fabric, shown) -> groups.add(group(fabric, shown, voice.language())));
        StringBuilder tiles = new StringBuilder();
        if (!look.isInGreys()) {
            swatches.tiles(tiles);
        }
        return new StashTable(
                List.copyOf(groups),
                TableFit.of(groups, look.zoom(), isExample(lots) ? EXAMPLE_LINE : 0),
                tiles.toString(),
                look.isInGreys(),
                voice.ruler().isMetric(),
                marks(fabrics, found));
    }

    private static Marks marks(List<Fabric> fabrics, Map<Fabric, List<Shown>> found) {
        List<Laid> laid =
                found.values().stream().flatMap(List::stream).map(Shown::marks).toList();
        return new Marks(
                laid.stream().anyMatch(one -> one.slip.isPresent()),
                laid.stream().anyMatch(Laid::isKept),
                fabrics.stream().anyMatch(one -> one.faces() == Fabric.Faces.RIGHT),
                laid.stream().anyMatch(Laid::hasNap));
    }

    private static Group group(Fabric fabric, List<Shown> shown, Language language) {
        StashingWords words = StashingWords.in(language);
        int pieces = shown.stream().mapToInt(Shown::count).sum();
        return new Group(
                fabric.name(),
                new Said(
                        words.groupNote(fabric.faces().name(), fabric.nap().name(), String.valueOf(pieces)),
                        words.and(words.pieces(pieces), FabricSaid.about(fabric, language)),
                        fabric.colour().isKnown()),
                "/stash/fabric?name=" + URLEncoder.encode(fabric.name(), StandardCharsets.UTF_8),
                columns(shown));
    }

    /** Each piece on the foot line, or over the last one where both together are no higher than the highest. */
    private static List<Column> columns(List<Shown> shown) {
        List<Shown> highFirst = shown.stream()
                .sorted((one, other) -> Double.compare(other.heightInches(), one.heightInches()))
                .toList();
        double highest = highFirst.get(0).heightInches();
        List<List<Shown>> columns = new ArrayList<>();
        for (Shown piece : highFirst) {
            columns.stream()
                    .filter(column -> isRoomOver(column, piece, highest))
                    .findFirst()
                    .orElseGet(() -> {
                        columns.add(new ArrayList<>());
                        return columns.get(columns.size() - 1);
                    })
                    .add(0, piece);
        }
        return columns.stream().map(column -> new Column(List.copyOf(column))).toList();
    }

    private static boolean isRoomOver(List<Shown> column, Shown piece, double highest) {
        double high = column.stream().mapToDouble(Shown::heightInches).sum();
        double wide = column.stream().mapToDouble(Shown::widthInches).max().orElse(0);
        return high + 1 + piece.heightInches() <= highest && piece.widthInches() <= wide * 1.25;
    }

    private static Shown shown(Lot lot, StashAtHand heap, Swatches swatches, TableLook look, Voice voice) {
        Piece first = lot.first();
        String size = voice.write(lot.size(), Rounding.NEAREST);
        int shade = shade(first.fabric().colour());
        String fill = look.isInGreys() ? grey(shade) : swatches.fill(first.fabric());
        return new Shown(
                first.id() + ":" + lot.count(),
                size,
                lot.count(),
                lot.numbers(),
                words(lot, size, heap, voice.language()),
                new Drawn(
                        inches(lot.size().width()),
                        inches(lot.size().height()),
                        fill,
                        look.isInGreys() ? grey(shade) : first.fabric().colour().hex(),
                        look.isInGreys() ? shade : 0),
                new Laid(
                        claimed(lot, heap),
                        lot.pieces().stream().allMatch(heap::isAside),
                        first.fabric().nap() == Fabric.Nap.LENGTHWISE));
    }

    private static String words(Lot lot, String size, StashAtHand heap, Language language) {
        StashingWords words = StashingWords.in(language);
        Piece first = lot.first();
        String fabric = first.fabric().name();
        String washed = words.washed(first.washed().name());
        String said = washed.isEmpty()
                ? words.lot(fabric, lot.count(), lot.numbers(), size)
                : words.lotWashed(fabric, lot.count(), lot.numbers(), size, washed);
        return FabricSaid.and(said, heap.held(lot.pieces(), language), language);
    }

    /** The cloth that counts on it, shortened to what a slip has room for. */
    private static Optional<String> claimed(Lot lot, StashAtHand heap) {
        boolean hasRoom = inches(lot.size().width().max(lot.size().height())) >= LEAST_FOR_WORDS;
        return heap.promises().cloths().stream()
                .filter(one -> lot.pieces().stream().anyMatch(one.pieces()::contains))
                .map(one -> hasRoom ? one.name().replaceFirst(EXAMPLE, "") : "")
                .findFirst();
    }

    /** One of five even steps of lightness, 1 for the darkest. */
    private static int shade(Colour colour) {
        return 1 + (int) Math.min(SHADES - 1, colour.lab().lightness() * SHADES / 100);
    }

    private static String grey(int shade) {
        return new Lab((shade - 0.5) * 100 / SHADES, 0, 0).toColour().hex();
    }

    private static double inches(Length length) {
        return length.in(Unit.INCH);
    }
}
