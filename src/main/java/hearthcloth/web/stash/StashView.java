package hearthcloth.web.stash;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Lot;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.Store;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PieceDrawing;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The stash as the page shows it: some lots of it on the table to scale, all fabrics with their totals.
 *
 * @param pages how many there are; one page shows as many lots as are drawn at once
 * @param trouble with what was asked; empty where there is none
 * @param isWished true where she said what the next cloth is for
 */
public record StashView(
        StashAsked asked,
        StashTable table,
        List<Total> totals,
        String summary,
        int pages,
        String undo,
        String redo,
        String trouble,
        boolean isWished,
        boolean isEmpty,
        Voice voice) {

    /** So many lots are drawn on one page. */
    static final int LOTS = 120;

    /** How far the lines of the table's grid are apart. */
    public String grid() {
        return voice.write(isMetric() ? Length.cm(10) : Length.inches(5), Rounding.NEAREST);
    }

    private boolean isMetric() {
        return voice.ruler().isMetric();
    }

    /** What there is of one fabric, whatever is asked. */
    public record Total(String fabric, PieceDrawing swatch, int pieces, String area, String href, boolean chosen) {}

    static StashView of(Store store, StashAsked asked, Voice voice) {
        Ruler ruler = voice.ruler();
        StashAtHand heap = store.atHand();
        Stash stash = heap.stash();
        Map<String, Length> across = store.swatches().across();
        List<Piece> found = new ArrayList<>();
        String trouble = find(stash, asked, voice, found);
        List<Lot> lots = sorted(Lot.of(found));
        int pages = Math.max(1, (lots.size() + LOTS - 1) / LOTS);
        int page = Math.min(asked.page(), pages);
        List<Lot> here = lots.subList((page - 1) * LOTS, Math.min(lots.size(), page * LOTS));
        return new StashView(
                new StashAsked(asked.text(), asked.fabric(), asked.least(), page),
                StashTable.of(here, heap, across, TableLook.of(store), voice),
                totals(stash, asked, across, voice),
                summary(stash, found, asked, voice),
                pages,
                store.stash().undoable().orElse(""),
                store.stash().redoable().orElse(""),
                trouble,
                !Wished.of(store).equals(Purpose.NOTHING),
                stash.pieces().isEmpty(),
                voice);
    }

    /** Puts the pieces she wants into {@code found}; what is wrong with the size she asks for, then all are wanted. */
    private static String find(Stash stash, StashAsked asked, Voice voice, List<Piece> found) {
        Optional<Size> least = Optional.empty();
        String trouble = "";
        try {
            least = asked.leastSize(voice.ruler().unit());
        } catch (MeasureException e) {
            trouble = Refusal.of(e).in(voice);
        }
        for (Piece piece : stash.pieces()) {
            if (asked.wants(piece, least)) {
                found.add(piece);
            }
        }
        return trouble;
    }

    /** By fabric, in the order of names; within one the largest first. */
    private static List<Lot> sorted(List<Lot> lots) {
        List<Lot> sorted = new ArrayList<>(lots);
        sorted.sort(Comparator.comparing((Lot lot) -> lot.first().fabric().name(), String.CASE_INSENSITIVE_ORDER)
                .thenComparing(lot -> lot.first().fabric().name())
                .thenComparing(lot -> -lot.first().areaMm2()));
        return sorted;
    }

    /** Pieces and square millimetres by name. */
    private static Map<String, double[]> sums(List<Piece> pieces) {
        Map<String, double[]> sums = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            double[] sum = sums.computeIfAbsent(piece.fabric().name(), name -> new double[2]);
            sum[0]++;
            sum[1] += piece.areaMm2();
        }
        return sums;
    }

    private static List<Total> totals(Stash stash, StashAsked asked, Map<String, Length> across, Voice voice) {
        Map<String, double[]> sums = sums(stash.pieces());
        List<Total> totals = new ArrayList<>();
        int number = 0;
        for (Fabric fabric : stash.fabrics()) {
            double[] sum = sums.getOrDefault(fabric.name(), new double[2]);
            Size patch = Size.square(Length.mm(20));
            totals.add(new Total(
                    fabric.name(),
                    PieceDrawing.of(patch, fabric, 1, 1, across, "t" + number++),
                    (int) sum[0],
                    area(sum[1], voice),
                    asked.of(fabric.name().equals(asked.fabric()) ? "" : fabric.name()),
                    fabric.name().equals(asked.fabric())));
        }
        totals.sort(Comparator.comparing(Total::fabric, String.CASE_INSENSITIVE_ORDER));
        return totals;
    }

    private static String summary(Stash stash, List<Piece> found, StashAsked asked, Voice voice) {
        if (stash.pieces().isEmpty()) {
            return "";
        }
        double area = found.stream().mapToDouble(Piece::areaMm2).sum();
        StashingWords words = StashingWords.in(voice.language());
        String said = area(area, voice);
        int all = stash.pieces().size();
        return asked.isAll() ? words.summary(said, all) : words.summarySome(said, String.valueOf(found.size()), all);
    }

    /** An area as one says it: {@code 384 sq in}, {@code 2.5 sq yd}, {@code 3.1 m²}. */
    static String area(double squareMm, Voice voice) {
        boolean isMetric = voice.ruler().isMetric();
        double side = isMetric ? 1000 : 914.4;
        double far = squareMm / (side * side);
        return far < 2
                ? voice.area(squareMm, Rounding.NEAREST)
                : StashingWords.in(voice.language())
                        .area(voice.local(String.format(Locale.ROOT, "%.1f", far)), isMetric ? "m" : "yd");
    }
}
