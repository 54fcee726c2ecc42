package hearthcloth.benchmarks.sets;

import hearthcloth.cutstock.job.BarTurn;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.FabricSets;
import hearthcloth.cutstock.job.JobBar;
import hearthcloth.cutstock.job.JobBlock;
import hearthcloth.cutstock.job.StockPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Seeded jobs of our own kind and of middle size: a hearth and two or three rounds of bars about it, each round of its
 * own width, of two or three fabrics, out of odd pieces, some with nap. Lengths in millimetres; no rule about where
 * joins lie. Whether a job can be made is not known beforehand.
 */
public final class Midsize {

    private static final long LOSS = 15;
    private static final long LEAST = 60;

    private final SplittableRandom chance;
    private final int fabrics;
    private final List<StockPiece> stock = new ArrayList<>();
    private final List<JobBar> bars = new ArrayList<>();

    private Midsize(long seed) {
        this.chance = new SplittableRandom(seed);
        this.fabrics = 2 + chance.nextInt(2);
    }

    /** The job of a seed. */
    public static CutJoinJob job(long seed) {
        return new Midsize(seed).job();
    }

    private CutJoinJob job() {
        long side = 150 + 10L * chance.nextInt(11);
        JobBlock hearth = new JobBlock(0, side, side, FabricSets.of(0), true);
        long extent = side;
        int rounds = 2 + chance.nextInt(2);
        for (int round = 0; round < rounds; round++) {
            extent = round(extent, 70 + 5L * chance.nextInt(9));
        }
        double plenty = 1.15 + 0.35 * chance.nextDouble();
        for (int fabric = 0; fabric < fabrics; fabric++) {
            pieces(fabric, plenty * need(fabric));
        }
        stock.add(new StockPiece(stock.size(), side + chance.nextInt(60), side + chance.nextInt(150), 0, false));
        return new CutJoinJob(stock, List.of(hearth), bars, List.of(), LOSS, 0, LEAST);
    }

    /** Four bars round a square; two meet one another's ends, two go past. */
    private long round(long extent, long width) {
        long finished = width - LOSS;
        FabricSets one = some();
        FabricSets other = some();
        for (int side = 0; side < 4; side++) {
            long length = extent + finished * ((side + 1) / 2);
            BarTurn turn = side % 2 == 0 ? BarTurn.NAP_ACROSS : BarTurn.NAP;
            bars.add(new JobBar(
                    1 + bars.size(), width, length, side < 2 ? one : other, false, 6, LEAST, turn, List.of()));
        }
        return extent + 2 * finished;
    }

    private FabricSets some() {
        int first = chance.nextInt(fabrics);
        int second = chance.nextInt(3) == 0 ? chance.nextInt(fabrics) : first;
        return FabricSets.of(first, second);
    }

    /** The area of the bars that fabric may serve, shared where several may. */
    private double need(int fabric) {
        return bars.stream()
                .filter(bar -> bar.fabrics().has(fabric))
                .mapToDouble(bar ->
                        (double) bar.width() * bar.length() / bar.fabrics().stream().count())
                .sum();
    }

    private void pieces(int fabric, double area) {
        boolean nap = chance.nextInt(4) == 0;
        for (double sum = 0; sum < area; sum += stock.get(stock.size() - 1).area()) {
            stock.add(new StockPiece(stock.size(), 70 + chance.nextInt(150), 120 + chance.nextInt(330), fabric, nap));
        }
    }
}
