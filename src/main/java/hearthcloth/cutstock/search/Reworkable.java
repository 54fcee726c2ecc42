package hearthcloth.cutstock.search;

import java.util.SplittableRandom;


/** A complete attempt at a problem that can be partly undone, done again another way, and put back. */
public interface Reworkable {

    /** Takes part of the attempt apart and builds it up again, guided by chance. */
    void rework(SplittableRandom chance);

    /** What the walk goes by: less is better, one unit is one unit of the first good (here a join). */
    double cost();

    /** Remembers the attempt as it is now, in place of what was remembered before. */
    void save();

    /** Puts back what was remembered last. */
    void restore();
}
