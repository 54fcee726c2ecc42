package hearthcloth.web.photo;

import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.picturing.PicturingWords;
import java.util.OptionalInt;

/**
 * A photograph whose pieces she puts right, with the forms for it.
 *
 * @param asker whom it answers
 */
public record SortingView(PhotoView photo, PageFrame.Asker asker) {

    public String token() {
        return asker.token();
    }

    /** What is said on it. */
    public PicturingWords words() {
        return PicturingWords.in(asker.language());
    }

    /** The photograph after a change. */
    @PageView.Template("part/photo-changed.jte")
    public record Changed(SortingView sorting, String said) implements PageView {}

    /**
     * What tells of the last change, with undo and redo.
     *
     * @param isAnswer true where it takes the place of the one on the page
     */
    @PageView.Template("part/photo-tools.jte")
    public record Tools(SortingView sorting, boolean isAnswer) implements PageView {}

    /** One fabric of it with its pieces. */
    public record OneFabric(SortingView sorting, PhotoView.Fabric fabric) {}

    /** What a button says, and what it says to those who hear it away from its place. */
    public record Label(String words, String about) {}

    /**
     * A button that does one thing to one piece.
     *
     * @param what is done, as the form says it
     * @param name tells it from other buttons of the piece that do the same
     * @param corner which corner or side it is about, from 0
     */
    public record PieceButton(
            SortingView sorting, String what, String name, String piece, Label label, OptionalInt corner) {

        /** The same under a name of its own. */
        public PieceButton named(String own) {
            return new PieceButton(sorting, what, own, piece, label, corner);
        }

        /** The same, told in more words to those who hear it. */
        public PieceButton about(String words) {
            return new PieceButton(sorting, what, name, piece, new Label(label.words(), words), corner);
        }

        /** The same for one corner or side. */
        public PieceButton at(int number) {
            return new PieceButton(sorting, what, name, piece, label, OptionalInt.of(number));
        }

        /** The button's id on the page. */
        public String id() {
            return "do-" + name + "-" + piece + (corner.isPresent() ? "-" + corner.getAsInt() : "");
        }
    }

    /** A button that does one thing to one piece. */
    public PieceButton button(String what, String piece, String words) {
        return new PieceButton(this, what, what, piece, new Label(words, words), OptionalInt.empty());
    }
}
