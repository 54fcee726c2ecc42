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
        HALVES("Two halves"),
        ROUNDS("Ring by ring"),
        TURNS("Turn and turn about"),
        FIELD("One field"),
        SPIRAL("Spiral"),
        SCATTERED("Scattered evenly"),
        GRADED("Light to dark"),
        FRAMES("Frames"),
        ACCENT("One bright scrap"),
        ALL("From the whole stash"),
        FALLS("As the fabric falls"),
        OUTWARDS("Best side out"),
        OWN("Your own choice");

        private final String title;

        Kind(String title) {
            this.title = title;
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
