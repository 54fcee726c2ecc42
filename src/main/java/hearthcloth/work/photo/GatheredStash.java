package hearthcloth.work.photo;

import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.photo.ReadPiece;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a photograph brings to a stash: for each fabric and size a line with its count.
 *
 * @param stash numbered as the lines of the file it would be written to
 * @param notes by line, which pieces of the picture it stands for
 */
public record GatheredStash(Stash stash, Map<Integer, Map<String, String>> notes) {

    /**
     * The narrowest piece that is kept; nothing narrower is of use in a cloth with felled seams
     * (docs/sources.md#narrowest-piece).
     */
    private static final Length LEAST = Length.mm(10);

    private static final int HEADER = 1;

    public GatheredStash {
        notes = Map.copyOf(notes);
    }

    /** The usable rectangles of the pieces that {@code taken} accepts, rounded down to the ruler's marks. */
    public static GatheredStash of(List<FabricGroup> groups, Voice voice, Predicate<ReadPiece> taken) {
        Ruler ruler = voice.ruler();
        Builder builder = new Builder(voice);
        for (FabricGroup group : groups) {
            Map<Size, List<ReadPiece>> sizes = new LinkedHashMap<>();
            group.pieces().stream()
                    .filter(taken)
                    .forEach(piece -> size(piece, ruler)
                            .ifPresent(size -> sizes.computeIfAbsent(size, s -> new ArrayList<>())
                                    .add(piece)));
            sizes.entrySet().stream()
                    .sorted(Comparator.comparingDouble(line -> -line.getKey().areaMm2()))
                    .forEach(line -> builder.add(group.fabric(), line.getKey(), line.getValue()));
        }
        return new GatheredStash(new Stash(builder.pieces), builder.notes);
    }

    /**
     * The rectangle that can surely be cut from a piece, rounded down to the ruler's marks, the longer side as its
     * length; empty where less than a centimetre is left.
     */
    public static Optional<Size> size(ReadPiece piece, Ruler ruler) {
        Size size = SortedPiece.size(piece.usable(), ruler);
        return size.width().isLessThan(LEAST) ? Optional.empty() : Optional.of(size);
    }

    public int lines() {
        return notes.size();
    }

    /** As a stash file. */
    public String write(Ruler ruler) {
        return StashFile.write(stash, ruler, notes);
    }

    private static final class Builder {
        private final Voice voice;
        private final List<hearthcloth.stash.Piece> pieces = new ArrayList<>();
        private final Map<Integer, Map<String, String>> notes = new LinkedHashMap<>();

        Builder(Voice voice) {
            this.voice = voice;
        }

        void add(Fabric fabric, Size size, List<ReadPiece> read) {
            int row = HEADER + 1 + notes.size();
            for (int i = 1; i <= read.size(); i++) {
                String id = read.size() == 1 ? String.valueOf(row) : row + "-" + i;
                pieces.add(new hearthcloth.stash.Piece(id, fabric, size, hearthcloth.stash.Piece.Washed.UNKNOWN, row));
            }
            String numbers = String.join(
                    " ",
                    read.stream().map(piece -> String.valueOf(piece.number())).toList());
            notes.put(
                    row,
                    Map.of(
                            "note",
                            PhotographingSentences.notePicture(Argument.text(numbers))
                                    .in(voice)));
        }
    }
}
