package hearthcloth.cutstock.join;

import java.util.List;

/**
 * Bars to be joined from strips of their own width. A bar is as long as its parts together less one loss for each join;
 * a strip may serve several bars, but gives no bar more than one part.
 *
 * @param leastPart the shortest part a joined bar may have
 */
public record JoinJob(List<Long> bars, List<Long> strips, long loss, long leastPart) {

    public JoinJob {
        bars = List.copyOf(bars);
        strips = List.copyOf(strips);
        if (loss < 0 || leastPart < 0 || bars.stream().anyMatch(bar -> bar <= 0)) {
            throw new IllegalArgumentException("bars " + bars + ", loss " + loss + ", least part " + leastPart);
        }
    }
}
