package hearthcloth.cutstock.piecing;

import java.util.HashMap;
import java.util.Map;

/**
 * The least that is lost, found by trying everything: each way to cut the cloth in two at each unit, each way to share the
 * scraps between the halves. For a handful of scraps and cloths a few units across.
 */
final class EveryCloth {

    /** No way. */
    static final long NONE = Long.MAX_VALUE / 4;

    private record Key(long width, long height, int scraps) {}

    private final PiecingJob job;
    private final long seam;
    private final long least;
    private final Map<Key, Long> known = new HashMap<>();

    private EveryCloth(PiecingJob job) {
        this.job = job;
        this.seam = job.allowances().narrow() + job.allowances().wide();
        this.least = job.terms().least()
                + 2 * Math.max(job.allowances().wide(), job.allowances().hem());
    }

    /** For a job of one cloth whose offcuts do not go back. */
    static long leastLost(PiecingJob job) {
        WishedCloth size = job.cloths().get(0);
        long hem = 2 * job.allowances().hem();
        EveryCloth every = new EveryCloth(job);
        long lost = NONE;
        for (int scraps = 1; scraps < 1 << job.scraps().size(); scraps++) {
            lost = Math.min(lost, every.lost(size.width() + hem, size.height() + hem, scraps));
        }
        return lost;
    }

    /** All of these scraps used for a piece cut to this size. */
    private long lost(long width, long height, int scraps) {
        if (Math.min(width, height) < least) {
            return NONE;
        }
        Key key = new Key(width, height, scraps);
        Long before = known.get(key);
        if (before != null) {
            return before;
        }
        long lost = Integer.bitCount(scraps) == 1
                ? patch(width, height, job.scraps().get(Integer.numberOfTrailingZeros(scraps)))
                : halves(width, height, scraps);
        known.put(key, lost);
        return lost;
    }

    private static long patch(long width, long height, Scrap scrap) {
        boolean fits = (width <= scrap.width() && height <= scrap.height())
                || (scrap.turnable() && width <= scrap.height() && height <= scrap.width());
        return fits ? scrap.width() * scrap.height() - width * height : NONE;
    }

    private long halves(long width, long height, int scraps) {
        long lost = NONE;
        for (int first = (scraps - 1) & scraps; first > 0; first = (first - 1) & scraps) {
            int second = scraps & ~first;
            for (long at = least; at <= width + seam - least; at++) {
                lost = Math.min(lost, lost(at, height, first) + lost(width + seam - at, height, second));
            }
            for (long at = least; at <= height + seam - least; at++) {
                lost = Math.min(lost, lost(width, at, first) + lost(width, height + seam - at, second));
            }
        }
        return Math.min(lost, NONE);
    }
}
