package hearthcloth.benchmarks.sets;

import hearthcloth.plan.cutjoin.Bar;
import hearthcloth.plan.cutjoin.Block;
import hearthcloth.plan.cutjoin.Fabrics;
import hearthcloth.plan.cutjoin.Job;
import hearthcloth.plan.cutjoin.StockPiece;
import hearthcloth.plan.cutjoin.Turn;
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
    private final List<Bar> bars = new ArrayList<>();

    private Midsize(long seed) {
        this.chance = new SplittableRandom(seed);
        this.fabrics = 2 + chance.nextInt(2);
    }

    /** The job of a seed. */
    public static Job job(long seed) {
        return new Midsize(seed).job();
    }

    private Job job() {
        long side = 150 + 10L * chance.nextInt(11);
        Block hearth = new Block(0, side, side, Fabrics.of(0), true);
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
        return new Job(stock, List.of(hearth), bars, List.of(), LOSS, 0, LEAST);
    }

    /** Four bars round a square; two meet one another's ends, two go past. */
    private long round(long extent, long width) {
        long finished = width - LOSS;
        Fabrics one = some();
        Fabrics other = some();
        for (int side = 0; side < 4; side++) {
            long length = extent + finished * ((side + 1) / 2);
            Turn turn = side % 2 == 0 ? Turn.NAP_ACROSS : Turn.NAP;
            bars.add(new Bar(1 + bars.size(), width, length, side < 2 ? one : other, false, 6, LEAST, turn, List.of()));
        }
        return extent + 2 * finished;
    }

    private Fabrics some() {
        int first = chance.nextInt(fabrics);
        int second = chance.nextInt(3) == 0 ? chance.nextInt(fabrics) : first;
        return Fabrics.of(first, second);
    }

    /** The area of the bars that fabric may serve, shared where several may. */
    private double need(int fabric) {
        return bars.stream()
                .filter(bar -> bar.fabrics().has(fabric))
                .mapToDouble(bar ->
                        (double) bar.width() * bar.length() / bar.fabrics().size())
                .sum();
    }

    private void pieces(int fabric, double area) {
        boolean nap = chance.nextInt(4) == 0;
        for (double sum = 0; sum < area; sum += stock.get(stock.size() - 1).area()) {
            stock.add(new StockPiece(stock.size(), 70 + chance.nextInt(150), 120 + chance.nextInt(330), fabric, nap));
        }
    }
}
