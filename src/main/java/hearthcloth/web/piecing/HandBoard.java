package hearthcloth.web.piecing;

import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.designing.DesigningWords;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The table with everything that can be done on it.
 *
 * @param drawn what lies on it, as SVG, each part by itself
 * @param spare the scraps that do not
 * @param chosen the scrap that was tapped
 */
@PageView.Template("part/piecing.jte")
public record HandBoard(List<String> drawn, List<Spare> spare, Optional<Chosen> chosen, Deeds deeds, Told told)
        implements PageView {

    /** A scrap in the heap, as a link. */
    public record Spare(String href, String words, String drawn, boolean chosen) {}

    /**
     * What can be done with the scrap that was tapped.
     *
     * @param piece its number
     * @param state whether it lies on the table, is locked, can be turned, and whether its part has several patches
     * @param choices in groups, each under a heading
     * @param none said where two do not go together; empty else
     */
    public record Chosen(String title, String piece, State state, List<Group> choices, String none) {}

    /** Where a scrap is and what may be done with it. */
    public record State(boolean lies, boolean locked, boolean turnable, boolean several) {}

    /**
     * Choices of one kind.
     *
     * @param what the field by which the form says which was taken
     */
    public record Group(String heading, String what, List<Choice> choices) {}

    /**
     * One choice.
     *
     * @param value by which the form knows it
     * @param fill what its swatch is filled with
     * @param words what it is
     * @param more what it trims
     */
    public record Choice(String value, String fill, String words, String more) {}

    /**
     * What can be done with the table.
     *
     * @param whole whether one cloth of the wished size lies there
     * @param change the name of the kept cloth that is changed; empty where it is a new one
     * @param undo whether something can be taken back, and done again
     */
    public record Deeds(boolean whole, String change, boolean undo, boolean redo, boolean empty) {}

    /**
     * What is told.
     *
     * @param said what was just done; may be empty
     * @param about the cloth, where it is whole; empty else
     * @param size of the cloth, as it may be typed
     * @param mark tells whether a form is out of date
     * @param tiles the fabrics' figures, as SVG
     */
    public record Told(String said, String about, String size, String mark, String tiles, Asking asking) {}

    /** Whom it answers. */
    public record Asking(String token, Settings settings) {

        DesigningWords words() {
            return DesigningWords.in(settings.pages());
        }
    }

    public DesigningWords words() {
        return told.asking.words();
    }

    /** What the button that fills the cloth says. */
    public String fill() {
        return words().piecingFill(answer(deeds.whole));
    }

    /** What the button that locks the chosen scrap says. */
    public String lock() {
        return words().piecingLock(answer(state(State::locked)));
    }

    /** What the button that takes the chosen scrap's part apart says. */
    public String apart() {
        return words().piecingApart(answer(state(State::several)));
    }

    private boolean state(Predicate<State> is) {
        return chosen.map(Chosen::state).filter(is).isPresent();
    }

    private static String answer(boolean is) {
        return is ? "yes" : "no";
    }

    public String token() {
        return told.asking.token;
    }

    public String unit() {
        return told.asking.settings.voice().unit();
    }
}
