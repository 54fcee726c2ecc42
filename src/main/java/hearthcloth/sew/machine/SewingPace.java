package hearthcloth.sew.machine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * How long her own steps took, by kind. The median is used, so that one long search for the scissors does not count for
 * much (docs/sources.md#median-spread). Nothing is assumed: a kind of step that she has not done often enough has no
 * time.
 *
 * @param middle median seconds for each kind that is known
 */
public record SewingPace(Map<AtTheMachine.Kind, Long> middle) {

    /** With fewer steps of a kind than this nothing is concluded (ours). */
    public static final int FEWEST = 3;

    /**
     * Seconds: a longer gap is a pause and not a step, and one shorter than {@link #SLIP} is a slip of the finger
     * (ours).
     */
    private static final long PAUSE = 60 * 60;

    private static final long SLIP = 20;

    /** A step that was done, and when, in seconds from any fixed moment. */
    public record Step(AtTheMachine.Kind kind, long at) {}

    public SewingPace {
        middle = Map.copyOf(middle);
    }

    /** Learns from sewings, each a list of steps in the order they were done. */
    public static SewingPace of(List<List<Step>> sewings) {
        Map<AtTheMachine.Kind, List<Long>> took = new EnumMap<>(AtTheMachine.Kind.class);
        for (List<Step> sewing : sewings) {
            for (int i = 1; i < sewing.size(); i++) {
                long gap = sewing.get(i).at() - sewing.get(i - 1).at();
                if (gap > SLIP && gap < PAUSE) {
                    took.computeIfAbsent(sewing.get(i).kind(), none -> new ArrayList<>())
                            .add(gap);
                }
            }
        }
        Map<AtTheMachine.Kind, Long> middle = new EnumMap<>(AtTheMachine.Kind.class);
        took.forEach((kind, gaps) -> {
            if (gaps.size() >= FEWEST) {
                Collections.sort(gaps);
                middle.put(kind, gaps.get(gaps.size() / 2));
            }
        });
        return new SewingPace(middle);
    }

    /** How many seconds these steps will take her; empty where one of them is of a kind not known yet. */
    public OptionalLong of(Iterable<AtTheMachine> steps) {
        long all = 0;
        for (AtTheMachine step : steps) {
            Long one = middle.get(step.kind());
            if (one == null) {
                return OptionalLong.empty();
            }
            all += one;
        }
        return OptionalLong.of(all);
    }
}
