package hearthcloth.benchmarks.sets;

import hearthcloth.cutstock.piecing.Allowances;
import hearthcloth.cutstock.piecing.PiecingJob;
import hearthcloth.cutstock.piecing.Scrap;
import hearthcloth.cutstock.piecing.Terms;
import hearthcloth.cutstock.piecing.WishedCloth;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Heaps of scraps made up by chance, to warm the machine with: one or two cloths of two thirds of the heap. */
public final class Heaps {

    private static final int SEAM = 6;

    private Heaps() {}

    /** The heap of a seed: 12 to 91 scraps, in eighths of an inch. */
    public static PiecingJob of(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Scrap> scraps = new ArrayList<>();
        int count = 12 + chance.nextInt(80);
        double net = 0;
        for (int i = 0; i < count; i++) {
            Scrap scrap = new Scrap(
                    20 + chance.nextInt(80), 20 + chance.nextInt(80), chance.nextInt(6), chance.nextInt(4) > 0);
            net += (double) (scrap.width() - SEAM) * (scrap.height() - SEAM);
            scraps.add(scrap);
        }
        int cloths = 1 + chance.nextInt(2);
        long side = Math.round(Math.sqrt(net * 2 / 3 / cloths));
        List<WishedCloth> sizes = new ArrayList<>();
        for (int i = 0; i < cloths; i++) {
            sizes.add(new WishedCloth(side + chance.nextInt(10), side - chance.nextInt(10)));
        }
        Terms terms = chance.nextBoolean() ? new Terms(12, 0, 0, 1, 4) : new Terms(12, 20, 40, 1, 4);
        return new PiecingJob(sizes, scraps, new Allowances(2, 4, 4), terms);
    }
}
