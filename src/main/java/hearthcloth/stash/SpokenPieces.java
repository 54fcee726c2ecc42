package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourException;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.tongue.LineWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.ReadingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Pieces described in one line: {@code 4 x 8 in, 12 of them, green print, right side}. In any order: a size (width by
 * length; {@code 1 1/2 yd of 44 in} off the bolt; {@code 6 in square}; {@code fat quarter}), how many, faces, nap,
 * washing, a colour as {@code #8a9a5b}. The rest is the fabric's name. French, German, Spanish, Korean and Japanese lines
 * are heard as well.
 *
 * @param size width across, height along the selvage
 * @param colour only where the line gives one as a number; the name may suggest one
 * @param faces empty where the line does not say
 * @param nap empty where the line does not say
 */
public record SpokenPieces(
        String name,
        Size size,
        int count,
        Optional<Colour> colour,
        Optional<Fabric.Faces> faces,
        Optional<Fabric.Nap> nap,
        Piece.Washed washed)
        implements SpokenLine {

    /** A longer line is not read as a description. */
    private static final int LONGEST = 300;

    /**
     * Reads one line.
     *
     * @param bare the unit of sizes without one; null where it must be written
     */
    public static SpokenLine hear(String line, @Nullable Unit bare) {
        String plain = Names.plain(line);
        if (plain.length() > LONGEST) {
            return new Unclear(ReadingSentences.lineLong(Argument.number(plain.length())));
        }
        try {
            SpokenSize.Found size = SpokenSize.find(SpokenNumbers.inFigures(LineWords.english(plain)), bare);
            return pieces(size);
        } catch (MeasureException e) {
            return new Unclear(RefusedException.sentence(e));
        } catch (ColourException e) {
            return new Unclear(ReadingSentences.lineColour(Argument.written(String.valueOf(e.getMessage()))));
        }
    }

    private static SpokenLine pieces(SpokenSize.Found found) {
        SpokenWords words = new SpokenWords(found.rest());
        Optional<Colour> colour = words.hex().map(Colour::parse);
        Optional<Fabric.Faces> faces = words.first(SpokenWords.FACES);
        Optional<Fabric.Nap> nap = words.first(SpokenWords.NAP);
        Piece.Washed washed = words.first(SpokenWords.WASHED).orElse(Piece.Washed.UNKNOWN);
        int count = words.count();
        String name = words.name();
        if (count < 1 || count > StashFile.MOST_PIECES) {
            return new Unclear(ReadingSentences.lineHowMany(Argument.number(StashFile.MOST_PIECES)));
        }
        if (name.isEmpty()) {
            return new Unclear(ReadingSentences.lineNoName());
        }
        if (name.codePointCount(0, name.length()) > Names.LONGEST) {
            return new Unclear(ReadingSentences.lineLongName(Argument.number(Names.LONGEST)));
        }
        return new SpokenPieces(name, found.size(), count, colour, faces, nap, washed);
    }

    /** The fabric of this line where none of that name is there; its colour differs from those in {@code taken}. */
    public Fabric fabric(Set<Colour> taken) {
        return new Fabric(
                name,
                colour.orElseGet(() -> NamedColours.pick(name, taken)),
                faces.orElse(Fabric.Faces.SAME),
                nap.orElse(Fabric.Nap.ANY));
    }
}
