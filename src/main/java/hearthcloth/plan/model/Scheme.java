package hearthcloth.plan.model;

import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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
        SPIRAL("Spiral", "light and dark wind outwards side by side"),
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
            return this == HALVES || this == TURNS || this == SPIRAL;
        }

        /** The plan of colour that can be wished under this name: its title, or the word {@code light-to-dark}. */
        public static Optional<Kind> named(String text) {
            String plain = text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
            return WISHED.stream()
                    .filter(kind -> kind.title.toLowerCase(Locale.ROOT).equals(plain))
                    .findFirst();
        }

        /** Whether a fabric lies beside itself on purpose: in halves, arms, rings or a field. */
        public boolean isOfAreas() {
            return switch (this) {
                case HALVES, SPIRAL, ROUNDS, FRAMES, GRADED, FIELD -> true;
                case TURNS, SCATTERED, ACCENT, ALL, FALLS, OUTWARDS, OWN -> false;
            };
        }

        /** A description that completes a sentence. */
        public String idea() {
            return idea;
        }
    }

    /** Those whose names are true or not true of a finished cloth, so that they can be wished. */
    public static final List<Kind> WISHED = List.of(
            Kind.HALVES,
            Kind.SPIRAL,
            Kind.TURNS,
            Kind.ROUNDS,
            Kind.GRADED,
            Kind.FRAMES,
            Kind.FIELD,
            Kind.SCATTERED,
            Kind.ACCENT);

    /** Those that can be mixed with another of these plans of colour: both names are then true of one cloth. */
    public static final List<Kind> MIXED = List.of(Kind.SCATTERED, Kind.ACCENT);

    public Scheme {
        hearth = List.copyOf(hearth);
        bars = bars.stream().map(List::copyOf).toList();
    }
}
