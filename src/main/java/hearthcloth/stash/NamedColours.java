package hearthcloth.stash;

import hearthcloth.colour.Colour;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Colours for fabrics whose colour nobody wrote down: the one that the name says ("green check", "grey linen"), a
 * little lighter or darker where another fabric has it, so that the two are told apart and each is still what it is
 * called. A name that says no colour gets plain undyed cloth, {@link Colour#UNDYED}; none is ever invented.
 */
final class NamedColours {

    /** Points of L* between fabrics of one name of a colour; 8 is the most, under 12 of CIEDE2000. */
    private static final List<Double> SHADES = List.of(0.0, 4.0, -4.0, 8.0, -8.0, 6.0, -6.0, 2.0, -2.0);

    private NamedColours() {}

    static Colour pick(String name, Set<Colour> taken) {
        Optional<Colour> named = Colour.named(name);
        return named.map(colour -> SHADES.stream()
                        .map(colour::shaded)
                        .filter(shade -> !taken.contains(shade))
                        .findFirst()
                        .orElse(colour))
                .orElse(Colour.UNDYED);
    }
}
