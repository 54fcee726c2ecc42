package hearthcloth.web.make;

import hearthcloth.sew.PieceTask;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.making.MakingWords;
import hearthcloth.work.Project.Stage;
import java.util.List;
import java.util.Optional;

/**
 * One piece on the page.
 *
 * @param row all pieces of the cloth
 * @param lines its cuts, in order
 */
public record CutSheet(SavedCloth cloth, Place place, Piece piece, List<Mini> row, List<Line> lines) {

    /**
     * How far she has come.
     *
     * @param at which of the pieces, from 0
     * @param of how many there are
     * @param done how many are wholly cut, or used as they are
     * @param cut true once all is cut and taken out of the stash
     */
    public record Place(int at, int of, int done, boolean cut) {}

    /**
     * The piece that is shown.
     *
     * @param words its fabric and size
     * @param desk its picture for a desk or tablet, {@code hand} the same drawn for a telephone
     */
    public record Piece(PieceTask task, String words, String desk, String hand, List<String> cautions) {}

    /** A piece in the row of all: so wide and high, in this colour, whether it is cut. */
    public record Mini(String words, int width, int height, String colour, boolean done) {

        /** Whether it is cut, as a catalogue asks. */
        public String cut() {
            return done ? "yes" : "no";
        }
    }

    /** A cut with its tick. */
    public record Line(int number, String measure, String sentence, String gives, boolean ticked) {}

    /** A slip to pin to a patch that has just come off. */
    public record Slip(String name, String fabric, String size) {}

    public CutSheet {
        row = List.copyOf(row);
        lines = List.copyOf(lines);
    }

    /** True where the cuts to make were asked for while sewing. */
    public boolean isRecut() {
        return cloth.document().life().stage() == Stage.RECUT;
    }

    public int at() {
        return place.at();
    }

    public int of() {
        return place.of();
    }

    public boolean isCut() {
        return place.cut();
    }

    /** True where every piece is cut, and only the stash does not know it yet. */
    public boolean isAllDone() {
        return place.done() == place.of();
    }

    public PieceTask task() {
        return piece.task();
    }

    /** The cut that is made now; none where the piece is cut, or is used as it is. */
    public Optional<Line> now() {
        return place.cut()
                ? Optional.empty()
                : lines.stream().filter(line -> !line.ticked()).findFirst();
    }

    /** How many cuts of this piece are still to be made. */
    public long left() {
        return lines.stream().filter(line -> !line.ticked()).count();
    }

    /** What the piece gives and leaves, for those who read rather than look. */
    public String gives() {
        return String.join(", ", task().gives());
    }

    /**
     * One piece on the page, with its forms.
     *
     * @param slips those of the patches that the cut of now sets free
     * @param asker whom it answers
     * @param isAnswer true where it takes the place of the one on the page, so that progress is spoken
     * @param asked what is asked back about a measure
     */
    @PageView.Template("part/mat.jte")
    public record Mat(CutSheet sheet, List<Slip> slips, PageFrame.Asker asker, boolean isAnswer, AskedBack asked)
            implements PageView {

        public String token() {
            return asker.token();
        }

        /** What is said on it. */
        public MakingWords words() {
            return MakingWords.in(asker.language());
        }

        /** How far cutting has come; a piece that is used as it is counts as done, to be shown and spoken. */
        public String progress() {
            return words().matProgress(
                            String.valueOf(sheet.of()),
                            String.valueOf(sheet.place().done()),
                            String.valueOf(sheet.at() + 1));
        }
    }

    /** The page. */
    @PageView.Template("cut.jte")
    public record View(PageFrame frame, CutSheet sheet, List<Slip> slips, AskedBack asked) implements PageView {

        public Mat mat() {
            return new Mat(sheet, slips, frame.asker(), false, asked);
        }
    }
}
