package hearthcloth.wish;

import hearthcloth.colour.Colour;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The fabrics of a heap nearest to some wished colours, each fabric for one colour. */
public final class NearestFabrics {

    /** Farther off by CIEDE2000 no fabric passes for a colour (ours: docs/sources.md#colour-figures). */
    private static final double FAR = 25;

    private NearestFabrics() {}

    /**
     * A wished colour and the fabric for it.
     *
     * @param apart their CIEDE2000 difference
     */
    public record Match(Colour wished, Fabric fabric, double apart) {}

    /** One for each colour that has a fabric near it; the earlier colours choose first. */
    public static List<Match> of(List<Colour> wished, Stash stash) {
        List<Fabric> left = new ArrayList<>(stash.fabrics());
        List<Match> found = new ArrayList<>();
        for (Colour colour : wished) {
            left.stream()
                    .map(fabric ->
                            new Match(colour, fabric, fabric.colour().lab().difference(colour.lab())))
                    .min(Comparator.comparingDouble(Match::apart))
                    .filter(match -> match.apart() <= FAR)
                    .ifPresent(match -> {
                        found.add(match);
                        left.remove(match.fabric());
                    });
        }
        return found;
    }

    /** Their names, the one with the largest piece first, since the first is for the hearth. */
    public static List<String> names(List<Match> matches, Stash stash) {
        return matches.stream()
                .map(Match::fabric)
                .sorted(Comparator.comparingDouble((Fabric fabric) -> largest(fabric, stash))
                        .reversed())
                .map(Fabric::name)
                .toList();
    }

    private static double largest(Fabric fabric, Stash stash) {
        return stash.of(fabric).stream().mapToDouble(Piece::areaMm2).max().orElse(0);
    }
}
