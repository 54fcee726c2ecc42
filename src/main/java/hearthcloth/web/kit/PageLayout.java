package hearthcloth.web.kit;

import gg.jte.Content;
import java.util.List;
import java.util.Locale;

/**
 * How a page is laid out round its content.
 *
 * @param styles names of the page's own style sheets in {@code /own}, without their ending
 * @param scripts names of the page's own scripts in {@code /own}, without their ending
 */
public record PageLayout(PageFrame frame, Shape shape, List<String> styles, List<String> scripts) {

    /** What a page does with the room under the header. */
    public enum Shape {
        /** One column, for reading and filling in; headed by the frame. */
        COLUMN,
        /** The whole width, for pictures; headed by the frame. */
        WIDE,
        /** The whole width, and the page sets its own heading; scrolls, its first screen complete. */
        SCREEN,
        /** As {@link #SCREEN}, but exactly as high as the screen wherever that is high enough. */
        WORK;

        /** As a class of the style sheet. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether the frame sets the heading. */
        public boolean isHeaded() {
            return this == COLUMN || this == WIDE;
        }
    }

    public PageLayout {
        styles = List.copyOf(styles);
        scripts = List.copyOf(scripts);
    }

    /** A whole page, as {@code frame.jte} shows it. */
    public record Filled(PageLayout layout, Content content) {}

    /** A question with its answer folded away under it, as {@code part/help.jte} shows it. */
    public record Help(String what, Content content) {}

    /** The same page with style sheets of its own. */
    public PageLayout styled(String... names) {
        return new PageLayout(frame, shape, List.of(names), scripts);
    }

    /** The same page with scripts of its own. */
    public PageLayout scripted(String... names) {
        return new PageLayout(frame, shape, styles, List.of(names));
    }

    /** The page with its content. */
    public Filled around(Content content) {
        return new Filled(this, content);
    }
}
