package hearthcloth.web.photo;

import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.stash.BegunPhoto;
import hearthcloth.words.picturing.PicturingWords;

/** What the pages of one photograph show: asked for, being read, not read, read. */
public final class PhotoScreens {

    private PhotoScreens() {}

    /**
     * How far a reading is.
     *
     * @param share in hundredths
     * @param before how many are read before it
     */
    @PageView.Template("part/photo-going.jte")
    public record Going(String id, int share, String what, int before, PageFrame.Asker asker) implements PageView {

        public String token() {
            return asker.token();
        }

        /** What is said on it. */
        public PicturingWords words() {
            return PicturingWords.in(asker.language());
        }
    }

    /**
     * The page that asks for a photograph.
     *
     * @param wrong what was wrong with the last one; may be empty
     */
    @PageView.Template("photo-ask.jte")
    public record Ask(BegunPhoto.Form form, String wrong) implements PageView {

        /** What is said on it. */
        public PicturingWords words() {
            return PicturingWords.in(form.frame().language());
        }
    }

    /** The page while it is read. */
    @PageView.Template("photo-going.jte")
    public record Waiting(PageFrame frame, Going going) implements PageView {}

    /** The page where nothing could be read; there she may tap the sheet's corners. */
    @PageView.Template("photo-refused.jte")
    public record Refused(PageFrame frame, String id, String reason, TappedCorners.View tapped) implements PageView {

        /** What is said on it. */
        public PicturingWords words() {
            return PicturingWords.in(frame.language());
        }
    }

    /** The page where what was read is put right. */
    @PageView.Template("photo.jte")
    public record View(PageFrame frame, SortingView sorting) implements PageView {}
}
