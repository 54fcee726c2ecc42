package hearthcloth.store;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which safety copies are too old to keep: by the order of making, not by the clock. Copies whose dates lie a year or more
 * from all others are counted by themselves, as a clock that is years wrong makes them: days that never were push none out
 * that was. Three such times are kept.
 */
final class CopyAge {

    /** Copies whose dates lie so far from each other are not of one time. */
    private static final Duration APART = Duration.ofDays(365);

    private static final int MOST_TIMES = 3;

    private CopyAge() {}

    /**
     * Those of a kind that are too old.
     *
     * @param all copies, the newest first
     */
    static List<SafetyCopy> tooOld(List<SafetyCopy> all, SafetyCopy.Reason reason) {
        List<SafetyCopy> alike =
                all.stream().filter(copy -> copy.reason() == reason).toList();
        Map<SafetyCopy, Integer> times = times(alike);
        Map<Integer, Integer> kept = new HashMap<>();
        List<SafetyCopy> old = new ArrayList<>();
        for (SafetyCopy copy : alike) {
            int time = times.getOrDefault(copy, 0);
            boolean isOfLateTimes = kept.containsKey(time) || kept.size() < MOST_TIMES;
            if (!isOfLateTimes || kept.merge(time, 1, Integer::sum) > reason.most()) {
                old.add(copy);
            }
        }
        return old;
    }

    /** For each copy the time it is of: by their dates, each is less than a year from the next of its time. */
    private static Map<SafetyCopy, Integer> times(List<SafetyCopy> copies) {
        Map<SafetyCopy, Integer> times = new HashMap<>();
        Instant last = Instant.MIN;
        int time = 0;
        for (SafetyCopy copy :
                copies.stream().sorted(Comparator.comparing(SafetyCopy::made)).toList()) {
            time += last.isBefore(copy.made().minus(APART)) ? 1 : 0;
            times.put(copy, time);
            last = copy.made();
        }
        return times;
    }
}
