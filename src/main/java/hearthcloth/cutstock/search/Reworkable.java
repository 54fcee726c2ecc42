package hearthcloth.cutstock.search;

import java.util.SplittableRandom;

/** A complete attempt at a problem that can be partly undone, rebuilt in another way, and restored. */
public interface Reworkable {

    /** Takes part of the attempt apart and rebuilds it at random. */
    void rework(SplittableRandom chance);

    /** The cost the search minimises; one unit is one unit of the first good (here a join). */
    double cost();

    /** Stores the attempt as it is now, in place of what was stored before. */
    void save();

    /** Restores what was stored last. */
    void restore();
}
