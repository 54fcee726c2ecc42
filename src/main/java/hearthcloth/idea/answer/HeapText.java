package hearthcloth.idea.answer;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Problem;
import hearthcloth.stash.SpokenLine;
import hearthcloth.stash.SpokenPieces;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A heap as a reader types it: a line for each kind of piece ({@code 4 x 8 in, 12 of them, green print}), or a whole stash file
 * pasted in.
 *
 * @param pieces what was understood
 * @param faults a sentence for each line that was not; the heap is used only where there are none
 */
public record HeapText(Stash pieces, List<Sentence> faults) {

    /** More than anybody types on a telephone, and what a page still plans in a minute. */
    private static final int MOST = 400;

    private static final int SHOWN = 12;

    public HeapText {
        faults = List.copyOf(faults);
    }

    /** Reads; {@code bare} is the unit of a number without one. */
    public static HeapText read(String text, Unit bare) {
        String first = text.strip().split("\n", 2)[0].toLowerCase(Locale.ROOT);
        HeapText heap = first.contains("fabric") && first.contains("width") ? file(text, bare) : lines(text, bare);
        return heap.pieces.pieces().size() > MOST && heap.faults.isEmpty()
                ? new HeapText(
                        heap.pieces,
                        List.of(RefusingSentences.heapMany(
                                Argument.number(MOST),
                                Argument.number(heap.pieces.pieces().size()))))
                : heap;
    }

    private static HeapText file(String text, Unit bare) {
        StashFile.Reading reading = StashFile.read(text, Optional.of(bare));
        if (reading instanceof StashFile.Read read) {
            return new HeapText(read.stash(), List.of());
        }
        return new HeapText(
                new Stash(List.of()),
                ((StashFile.Faulty) reading)
                        .problems().stream().limit(SHOWN).map(Problem::said).toList());
    }

    private static HeapText lines(String text, Unit bare) {
        List<Piece> pieces = new ArrayList<>();
        List<Sentence> faults = new ArrayList<>();
        Map<String, Fabric> fabrics = new LinkedHashMap<>();
        Set<Colour> taken = new HashSet<>();
        String[] lines = text.split("\r\n?|\n", -1);
        for (int i = 0; i < lines.length && pieces.size() <= MOST; i++) {
            if (lines[i].isBlank()) {
                continue;
            }
            SpokenLine heard = SpokenPieces.hear(lines[i], bare);
            if (heard instanceof SpokenPieces some) {
                Fabric fabric =
                        fabrics.computeIfAbsent(some.name().toLowerCase(Locale.ROOT), name -> some.fabric(taken));
                taken.add(fabric.colour());
                add(pieces, some, fabric, i + 1);
            } else {
                faults.add(RefusingSentences.heapLine(Argument.number(i + 1L), ((SpokenLine.Unclear) heard).said()));
            }
        }
        return new HeapText(new Stash(pieces), faults.subList(0, Math.min(SHOWN, faults.size())));
    }

    private static void add(List<Piece> pieces, SpokenPieces some, Fabric fabric, int line) {
        for (int number = 1; number <= Math.min(some.count(), MOST + 1); number++) {
            String id = some.count() == 1 ? Integer.toString(line) : line + "-" + number;
            pieces.add(new Piece(id, fabric, some.size(), some.washed(), line));
        }
    }
}
