package hearthcloth.cutstock.job;

/** The open interval between two positions along a bar; its ends do not belong to it. */
public record Span(long from, long to) {

    public Span {
        if (from > to) {
            throw new IllegalArgumentException("span from " + from + " to " + to);
        }
    }
}
