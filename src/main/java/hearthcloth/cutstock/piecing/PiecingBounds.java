package hearthcloth.cutstock.piecing;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What no plan can beat, proven.
 *
 * <p>Nets (cut lengths less one seam) add up exactly whatever the order of sewing, and cutting a scrap up only makes its
 * net smaller. So the cloths lack at least what the heap's net area falls short of theirs; and where no offcut goes back,
 * at least the excess of the smallest sum of whole nets that reaches them is lost.
 *
 * @param missing net area that every plan lacks
 * @param lost area that every full plan loses; 0 where nothing better is known
 * @param lostPercent the same in percent of the patches' cut area, rounded down
 * @param seams the fewest seams of a full plan
 */
public record PiecingBounds(long missing, long lost, double lostPercent, int seams) {

    private static final long MOST_SPARE = 1L << 24;

    /** Reckons the bounds of a job. */
    public static PiecingBounds of(PiecingJob job) {
        long seam = job.allowances().seam();
        long[] nets = job.scraps().stream()
                .mapToLong(scrap -> Math.max(0, scrap.width() - seam) * Math.max(0, scrap.height() - seam))
                .sorted()
                .toArray();
        long wished = job.cloths().stream().mapToLong(size -> net(job, size)).sum();
        long spare = Arrays.stream(nets).sum() - wished;
        long lost =
                spare < 0 || job.terms().keepShort() > 0 || job.terms().patches() > 1 ? 0 : leastExcess(nets, spare);
        long gross = job.scraps().stream()
                .mapToLong(scrap -> scrap.width() * scrap.height())
                .sum();
        double percent = lost == 0 ? 0 : Math.floor(1e6 * lost / (gross - lost)) / 1e4;
        return new PiecingBounds(Math.max(0, -spare), lost, percent, fewestSeams(job, nets, wished));
    }

    static long net(PiecingJob job, WishedCloth size) {
        return job.allowances().net(size.width()) * job.allowances().net(size.height());
    }

    /** The spare area less the largest sum of scraps that may be left out. */
    private static long leastExcess(long[] nets, long spare) {
        if (spare > MOST_SPARE) {
            return 0;
        }
        int size = (int) spare + 1;
        long[] reached = new long[(size + 63) / 64];
        reached[0] = 1;
        for (long net : nets) {
            if (net <= spare) {
                addShifted(reached, (int) net);
            }
        }
        return spare - BitSet.valueOf(reached).previousSetBit((int) spare);
    }

    /** Adds to a set of sums all of them that are greater by one number. */
    private static void addShifted(long[] sums, int by) {
        int words = by >> 6;
        int bits = by & 63;
        for (int i = sums.length - 1; i >= words; i--) {
            long moved = sums[i - words] << bits;
            if (bits > 0 && i > words) {
                moved |= sums[i - words - 1] >>> (64 - bits);
            }
            sums[i] |= moved;
        }
    }

    private static int fewestSeams(PiecingJob job, long[] nets, long wished) {
        long sum = 0;
        int scraps = 0;
        for (int i = nets.length - 1; i >= 0 && sum < wished; i--) {
            sum += nets[i];
            scraps++;
        }
        return Math.max(0, scraps - job.cloths().size());
    }
}
