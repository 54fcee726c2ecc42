package hearthcloth.cutstock.join;


/**
 * Where strips come from: places that can each still give strips of some length. A strip is known by a slot number from
 * the moment it is opened until it is closed. Kinds number the sorts of strip that bars ask for (a width, fabrics, a
 * way to lie); what they mean is up to the implementation.
 *
 * <p>What is cut from open strips is told as {@code used}: by slot, how much of each, from its beginning on.
 */
public interface StripSource {

    /** How many slots there are. */
    int slots();

    /** The lasting places that could ever give strips of this kind, those with the shortest first as far as known. */
    int[] places(int kind);

    /** The first number of a place that comes and goes as strips are opened and closed. */
    int firstPassing();

    /** Every passing place has a number below this; where nothing is (any more), nothing is offered. */
    int passingLimit();

    /** Whether a place is what an open strip does not use, so that strips taken there shorten it. */
    boolean isTail(int place);

    /** The length of the next strip of this kind from a place, 0 if it has none left. */
    long offered(int kind, int place, long[] used);

    /** How many strips of the offered length a place has left for this kind; asked only where one is offered. */
    int copies(int kind, int place, long[] used);

    /** Takes the offered strip and returns its slot, or -1 if there is none. */
    int open(int kind, int place, long[] used);

    /** Gives a strip back of which nothing is used. */
    void close(int slot);

    /** The slots in use are all below this. */
    int openLimit();

    /** Whether the slot holds a strip. */
    boolean isOpen(int slot);

    /** The length of an open strip, without what has been given to others from its end. */
    long length(int slot);

    /** The length of an open strip as it was opened. */
    long whole(int slot);

    /** What an open strip is cut from, so that strips which bind each other can be given back together. */
    int origin(int slot);

    /** The same of a lasting place. */
    int originOf(int place);

    /** Whether an open strip can serve a kind. */
    boolean serves(int slot, int kind);

    /** What opening a strip there costs beside its length, in joins (far below 1). */
    double openingCost(int kind, int place, long[] used);

    /** What the present cutting costs beside joins, in joins (far below 1 each). */
    double cost(long[] used);

    /** Remembers the present state. */
    void save();

    /** Puts back what was remembered. */
    void restore();
}
