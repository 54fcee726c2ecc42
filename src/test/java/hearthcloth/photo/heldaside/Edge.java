package hearthcloth.photo.heldaside;

import java.util.Random;

/** How a scrap was cut. */
public enum Edge {
    /** With a knife along a ruler. */
    CLEAN,
    /** By hand, with scissors: sides wander. */
    WAVY,
    /** Threads have come loose beyond a straight edge. */
    FRAYED;

    static Edge any(Random chance) {
        double d = chance.nextDouble();
        return d < 0.6 ? CLEAN : d < 0.8 ? WAVY : FRAYED;
    }
}
