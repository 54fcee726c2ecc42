package hearthcloth.web.kit;

import gg.jte.Content;

/**
 * How a page is laid out round its content.
 *
 * @param isWide true where pictures take the whole width of the screen
 * @param styles name of the page's own style sheet in {@code /own}, without its ending; empty for none
 * @param script name of the page's own script in {@code /own}, without its ending; empty for none
 */
public record PageLayout(PageFrame frame, boolean isWide, String styles, String script) {

    /** A whole page, as {@code frame.jte} shows it. */
    public record Filled(PageLayout layout, Content content) {}

    /** A question with its answer folded away under it, as {@code part/help.jte} shows it. */
    public record Help(String what, Content content) {}

    /** The same page with a style sheet of its own. */
    public PageLayout styled(String name) {
        return new PageLayout(frame, isWide, name, script);
    }

    /** The same page with a script of its own. */
    public PageLayout scripted(String name) {
        return new PageLayout(frame, isWide, styles, name);
    }

    /** The page with its content. */
    public Filled around(Content content) {
        return new Filled(this, content);
    }
}
