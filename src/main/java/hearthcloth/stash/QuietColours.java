package hearthcloth.stash;

import hearthcloth.colour.Colour;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Colours for fabrics whose colour nobody wrote down, each different from the others: the colour that the name suggests
 * ("madder check"), in another shade where that is taken, and otherwise a soft one. The fabric's name decides where in
 * the circle of hues to begin, so that a name keeps its colour from one day to the next as far as others allow.
 */
final class QuietColours {

    /** Hues in the circle, 15 degrees apart. */
    private static final int HUES = 24;
    /** Coprime to the number of hues, so that every hue is visited and neighbours are far apart. */
    private static final int STRIDE = 7;

    private static final int[][] SOFTNESS = {{38, 76}, {30, 58}, {24, 88}, {34, 42}, {46, 66}};

    private QuietColours() {}

    static Colour pick(String name, Set<Colour> taken) {
        return Colour.named(name)
                .flatMap(named -> Stream.of(
                                named,
                                named.lighter(),
                                named.darker(),
                                named.lighter().lighter(),
                                named.darker().darker())
                        .filter(shade -> !taken.contains(shade))
                        .findFirst())
                .orElseGet(() -> soft(name, taken));
    }

    private static Colour soft(String name, Set<Colour> taken) {
        int begin = Math.floorMod(name.hashCode(), HUES);
        for (int turn = 0; turn < HUES * SOFTNESS.length; turn++) {
            Colour colour = colour(begin + turn * STRIDE, SOFTNESS[turn / HUES]);
            if (!taken.contains(colour)) {
                return colour;
            }
        }
        return Colour.of(0x8a7f70 ^ (name.hashCode() & 0x3f3f3f));
    }

    /** The colour of a step: hue in steps of 15 degrees; saturation and brightness in per cent. */
    private static Colour colour(int step, int[] softness) {
        double hue = Math.floorMod(step, HUES) * 6.0 / HUES;
        double bright = softness[1] / 100.0;
        double chroma = bright * softness[0] / 100.0;
        int rgb = 0;
        for (int offset : new int[] {5, 3, 1}) {
            double k = (offset + hue) % 6;
            double channel = bright - chroma * Math.max(0, Math.min(1, Math.min(k, 4 - k)));
            rgb = rgb << 8 | (int) Math.round(channel * 255);
        }
        return Colour.of(rgb);
    }
}
