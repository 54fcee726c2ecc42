package hearthcloth.cutstock.cutjoin;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.NeighbourBars;
import hearthcloth.cutstock.job.Span;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Random jobs that use everything a job can say, in nanometres. */
public final class RandomJobs {

    private static final long MM = 1_000_000;

    private RandomJobs() {}

    public static CutJoinJob job(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        int fabrics = 1 + chance.nextInt(3);
        List<StockPiece> stock = new ArrayList<>();
        for (int i = 0, count = 6 + chance.nextInt(30); i < count; i++) {
            long width = (40 + chance.nextInt(400)) * MM;
            long length = (60 + chance.nextInt(700)) * MM;
            stock.add(new StockPiece(i, width, length, chance.nextInt(fabrics), chance.nextInt(4) == 0));
        }
        long[] widths = {(40 + chance.nextInt(40)) * MM, (60 + chance.nextInt(60)) * MM};
        List<JobBlock> blocks = new ArrayList<>();
        for (int i = chance.nextInt(3); i > 0; i--) {
            long width = (80 + chance.nextInt(120)) * MM;
            long height = (80 + chance.nextInt(120)) * MM;
            blocks.add(new JobBlock(100 + i, width, height, some(fabrics, chance), chance.nextBoolean()));
        }
        List<JobBar> bars = new ArrayList<>();
        for (int i = 0, count = 1 + chance.nextInt(9); i < count; i++) {
            bars.add(bar(200 + i, widths[chance.nextInt(2)], fabrics, chance));
        }
        List<NeighbourBars> neighbours = new ArrayList<>();
        for (int i = 1; i < bars.size(); i++) {
            if (chance.nextInt(2) == 0) {
                long shift = (chance.nextInt(100) - 50) * MM;
                neighbours.add(new NeighbourBars(200 + i - 1, 200 + i, shift, 25 * MM));
            }
        }
        return new CutJoinJob(stock, blocks, bars, neighbours, 19 * MM, 6 * MM, 50 * MM);
    }

    private static JobBar bar(int id, long width, int fabrics, SplittableRandom chance) {
        long length = (100 + chance.nextInt(1000)) * MM;
        List<Span> forbidden = IntStream.range(0, chance.nextInt(3))
                .mapToObj(i -> {
                    long middle = chance.nextInt(1000) * MM;
                    return new Span(middle - 25 * MM, middle + 25 * MM);
                })
                .toList();
        return new JobBar(
                id,
                width,
                length,
                some(fabrics, chance),
                chance.nextBoolean(),
                chance.nextInt(6),
                60 * MM,
                List.of(BarTurn.values()).get(chance.nextInt(4)),
                forbidden);
    }

    private static FabricSets some(int fabrics, SplittableRandom chance) {
        int one = chance.nextInt(fabrics);
        return FabricSets.of(IntStream.range(0, fabrics).filter(i -> i == one || chance.nextInt(2) == 0));
    }
}
