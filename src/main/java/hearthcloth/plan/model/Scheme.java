package hearthcloth.plan.model;

import hearthcloth.stash.Fabric;
import java.util.List;

/**
 * Which fabrics may go where in a layout.
 *
 * @param hearth the hearth is cut from one of these
 * @param bars for each bar the fabrics it may be made of; a joined bar may mix them
 */
public record Scheme(Kind kind, List<Fabric> hearth, List<List<Fabric>> bars) {

    /** The plans of colour that are offered. */
    public enum Kind {
        HALVES("Two halves", "light and dark meet along the diagonal"),
        ROUNDS("Ring by ring", "each round has its own fabric"),
        TURNS("Turn and turn about", "light and dark take turns, bar by bar"),
        FIELD("One field", "the hearth sits alone in one fabric"),
        SCATTERED("Scattered evenly", "one fabric for each bar, and none beside itself"),
        GRADED("Light to dark", "each round is darker than the one inside it"),
        FRAMES("Frames", "two fabrics take turns, round by round"),
        ACCENT("One bright scrap", "a bright fabric stands out among the others in a few places"),
        ALL("From the whole stash", "fabrics anywhere"),
        FALLS("As the fabric falls", "the bars are cut where the fabric goes farthest"),
        OUTWARDS("Best side out", "the fabric you chose is where it shows once tied"),
        OWN("Your own choice", "chosen by hand");

        private final String title;
        private final String idea;

        Kind(String title, String idea) {
            this.title = title;
            this.idea = idea;
        }

        /** Its name, as a maker would say it. */
        public String title() {
            return title;
        }

        /**
         * Whether each bar is to be of one fabric even where it is joined: halves and turns, whose bars may choose
         * among several, are no chance mixtures. Where fabric goes farthest, a bar takes what there is.
         */
        public boolean isOneFabricBar() {
            return this == HALVES || this == TURNS;
        }

        /** A description that completes a sentence. */
        public String idea() {
            return idea;
        }
    }

    public Scheme {
        hearth = List.copyOf(hearth);
        bars = bars.stream().map(List::copyOf).toList();
    }
}
