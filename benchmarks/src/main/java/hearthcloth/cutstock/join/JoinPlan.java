package hearthcloth.cutstock.join;

import java.util.List;

/** For each bar, in the order of the job, its parts in the order of joining. */
public record JoinPlan(List<List<Part>> bars) {

    /** A length cut from the strip with this index. */
    public record Part(int strip, long cut) {}

    public JoinPlan {
        bars = bars.stream().map(List::copyOf).toList();
    }

    /** Joins in all bars. */
    public int joins() {
        return bars.stream().mapToInt(parts -> parts.size() - 1).sum();
    }
}
