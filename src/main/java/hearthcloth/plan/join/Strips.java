package hearthcloth.plan.join;

/**
 * Where strips come from: places that can each still give strips of some length. A strip is known by a slot number from
 * the moment it is opened until it is closed. Kinds number the sorts of strip that bars ask for (a width, fabrics, a
 * way to lie); what they mean is up to the implementation.
 */
public interface Strips {

    /** How many slots there are. */
    int slots();

    /** The places that could ever give strips of this kind, those with the shortest first as far as known. */
    int[] places(int kind);

    /** The length of the next strip of this kind from one of its places, 0 if it has none left. */
    long offered(int kind, int place);

    /** How many strips of the offered length a place has left for this kind; asked only where one is offered. */
    int copies(int kind, int place);

    /** Takes the offered strip and returns its slot. */
    int open(int kind, int place);

    /** Gives a strip back. */
    void close(int slot);

    /** The slots in use are all below this. */
    int openLimit();

    /** Whether the slot holds a strip. */
    boolean isOpen(int slot);

    /** The full length of an open strip. */
    long length(int slot);

    /** What an open strip is cut from, so that strips which bind each other can be given back together. */
    int origin(int slot);

    /** Whether an open strip can serve a kind. */
    boolean serves(int slot, int kind);

    /** What opening a strip there costs beside its length, in joins (far below 1). */
    double openingCost(int kind, int place);

    /**
     * What the present cutting costs beside joins, in joins (far below 1 each).
     *
     * @param used by slot, how much of each open strip is used
     */
    double cost(long[] used);

    /** Remembers the present state. */
    void save();

    /** Puts back what was remembered. */
    void restore();
}
