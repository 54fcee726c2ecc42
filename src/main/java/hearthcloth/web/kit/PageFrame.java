package hearthcloth.web.kit;

import hearthcloth.words.Language;
import java.util.List;

/**
 * What every page carries round its content.
 *
 * @param title of the page, its one heading
 * @param stage which stage of the header is marked; empty on pages outside the stages
 * @param token proves that a form came from one of our own pages
 * @param settings how she measures and prints
 * @param said a sentence to be shown and spoken: what was just done, or what went wrong; may be empty
 * @param path of this page, to come back to
 * @param example true while the example that comes with the workroom lies in it
 * @param careful what she has to know on every page, such as that no safety copy could be made; mostly empty
 * @param person who she is in a studio; empty on her own machine
 */
public record PageFrame(
        String title,
        String stage,
        String token,
        Settings settings,
        String said,
        String path,
        boolean example,
        String careful,
        String person) {

    /**
     * A sentence said on the page, as {@code part/said.jte} shows it.
     *
     * @param isTrouble true where something went wrong
     */
    @PageView.Template("part/said.jte")
    public record Said(String words, boolean isTrouble) implements PageView {

        /** What was just done; may be empty. */
        public static Said done(String words) {
            return new Said(words, false);
        }

        /** What went wrong. */
        static Said trouble(String words) {
            return new Said(words, true);
        }
    }

    /**
     * Whom a part of a page answers.
     *
     * @param token proves that a form came from one of our own pages
     * @param language of her pages
     */
    public record Asker(String token, Language language) {}

    /** Whom the page answers. */
    public Asker asker() {
        return new Asker(token, language());
    }

    /** The language of the page's words. */
    public Language language() {
        return settings.pages();
    }

    /** The same as the page's {@code lang}. */
    public String lang() {
        return language().tag();
    }

    /** Laid out in one column, for reading and filling in. */
    public PageLayout narrow() {
        return laid(PageLayout.Shape.COLUMN);
    }

    /** Laid out over the whole screen, for pictures. */
    public PageLayout wide() {
        return laid(PageLayout.Shape.WIDE);
    }

    /** Laid out over the whole screen, with a heading that the page itself sets. */
    public PageLayout screen() {
        return laid(PageLayout.Shape.SCREEN);
    }

    /** Laid out exactly as high as the screen, with a heading that the page itself sets. */
    public PageLayout work() {
        return laid(PageLayout.Shape.WORK);
    }

    private PageLayout laid(PageLayout.Shape shape) {
        return new PageLayout(this, shape, List.of(), List.of());
    }

    /** The form that asks how she measures and prints, and then goes to {@code back}. */
    public Settings.Form measures(String back) {
        return new Settings.Form(settings, token, back);
    }

    /** The same page under another address, with something said on it. */
    public PageFrame saying(String words, String address) {
        return new PageFrame(title, stage, token, settings, words, address, example, careful, person);
    }

    /** The same page under another title. */
    public PageFrame called(String other) {
        return new PageFrame(other, stage, token, settings, said, path, example, careful, person);
    }

    /**
     * The stages of the job, in order; each is always reachable.
     *
     * @param word by which the catalogue of the frame knows it
     */
    public record Stage(String word, String href) {}

    public static final List<Stage> STAGES = List.of(
            new Stage("Gift", "/gift"),
            new Stage("Stash", "/stash"),
            new Stage("Cloth", "/cloth"),
            new Stage("Cut", "/cut"),
            new Stage("Sew", "/sew"),
            new Stage("Tie", "/tie"));

    /** What was made, beside the stages. */
    public static final Stage MADE = new Stage("Made", "/cloths");

    /** Threads, measures, safety copies, this tablet: all that is set once. */
    public static final Stage DRAWER = new Stage("Drawer", "/settings");

    /** How many bars of the mark are filled: one for each stage behind her. */
    public int filled() {
        for (int i = 0; i < STAGES.size(); i++) {
            if (STAGES.get(i).word().equals(stage)) {
                return i;
            }
        }
        return MADE.word().equals(stage) ? STAGES.size() : 0;
    }
}
