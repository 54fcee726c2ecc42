package hearthcloth.cutstock.join;

/**
 * Where strips come from: places that can each still give strips of some length. A strip is identified by a slot number
 * from the moment it is opened until it is closed. Kinds number the sorts of strip that bars need (a width, fabrics, a
 * direction); what they mean is up to the implementation.
 *
 * <p>The parameter {@code used} says, for each slot, how much of an open strip is cut, from its beginning on.
 */
public interface StripSource {

    /** The number of slots. */
    int slots();

    /**
     * The lasting places that could ever give strips of this kind, ordered with the shortest first as far as that is
     * known.
     */
    int[] places(int kind);

    /** The first number of a place that comes and goes as strips are opened and closed. */
    int firstPassing();

    /** Every passing place has a number below this; a number without a place offers nothing. */
    int passingLimit();

    /** Whether a place is the unused end of an open strip, so that strips taken there shorten it. */
    boolean isTail(int place);

    /** The length of the next strip of this kind from a place; 0 if it has none left. */
    long offered(int kind, int place, long[] used);

    /** How many strips of the offered length a place has left for this kind; only asked where one is offered. */
    int copies(int kind, int place, long[] used);

    /** Takes the offered strip and returns its slot, or -1 if there is none. */
    int open(int kind, int place, long[] used);

    /** Gives back a strip of which nothing is used. */
    void close(int slot);

    /** All slots in use are below this. */
    int openLimit();

    /** Whether the slot holds a strip. */
    boolean isOpen(int slot);

    /** The length of an open strip, without what has been given to others from its end. */
    long length(int slot);

    /** The length of an open strip as it was opened. */
    long whole(int slot);

    /** What an open strip is cut from, so that strips which bind each other can be given back together. */
    int origin(int slot);

    /** The same for a lasting place. */
    int originOf(int place);

    /** Whether an open strip can serve a kind. */
    boolean serves(int slot, int kind);

    /** The cost of opening a strip there, in joins (far below 1), without regard to its length. */
    double openingCost(int kind, int place, long[] used);

    /** The cost of the present cutting without its joins, in joins (far below 1 each). */
    double cost(long[] used);

    /** Stores the present state. */
    void save();

    /** Restores the stored state. */
    void restore();
}
