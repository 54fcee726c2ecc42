package hearthcloth.cutstock.piecing.parameter;

/**
 * How many blocks are followed. More find better covers and take longer, about in proportion.
 *
 * @param each so many of each number of scraps
 * @param spanning so many of those that reach from side to side already; they are what a cover ends with, so they are more
 * @param widening whether twice as many are followed each time a search looks more widely
 */
public record Beams(int each, int spanning, boolean widening) {

    /** As many as are followed when the search looks more widely for the so-many-eth time. */
    public Beams widened(int times) {
        return widening ? new Beams(each << times, spanning << times, true) : this;
    }
}
