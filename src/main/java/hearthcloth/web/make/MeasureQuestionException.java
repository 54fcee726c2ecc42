package hearthcloth.web.make;

import hearthcloth.measure.MeasureException;
import java.util.Map;

/** A measure that can be read but hardly be meant, or must be mended first; a question rather than a trouble. */
final class MeasureQuestionException extends MeasureException {

    private static final long serialVersionUID = 1L;

    private final String title;
    private final transient Map<String, String> meant;

    /**
     * A question about a measure.
     *
     * @param title in a few words
     * @param meant what she may have meant, by field
     */
    MeasureQuestionException(String title, String words, Map<String, String> meant) {
        super(words);
        this.title = title;
        this.meant = Map.copyOf(meant);
    }

    String title() {
        return title;
    }

    Map<String, String> meant() {
        return meant;
    }
}
