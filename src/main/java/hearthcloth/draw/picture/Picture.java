package hearthcloth.draw.picture;

import hearthcloth.draw.letters.SafeText;
import java.util.List;

/**
 * A finished drawing on a sheet of its own, in millimetres of paper; later marks lie over earlier ones. Immutable.
 *
 * @param title describes the picture in words, for those who cannot see it
 */
public record Picture(String title, double width, double height, List<Mark> marks) {

    public Picture {
        title = SafeText.onOneLine(title);
        marks = List.copyOf(marks);
    }

    /** Every line of words, in the order drawn. */
    public List<Mark.Words> words() {
        return marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }
}
