package hearthcloth.plan.colour;

import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.plan.fit.CutAnswer;
import hearthcloth.plan.fit.CutJob;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Exchanges what may be exchanged at no loss until the colours lie best: equal parts between bars, equal bars, the
 * order of parts, and which of two pieces of one size is cut in which way. Cuts, joins and leftovers stay what they
 * were. A descent to where no single exchange helps, then, while there are looks left, from places a few random
 * exchanges away; the best is kept. The same answer, looks and seed give the same cloth.
 */
public final class ColourExchange {

    private final CutJob cutJob;
    private final CutJoinJob job;
    private final Exchanged state;
    private final ExchangedColours colours;
    private final int shaken;
    private final List<Runnable> moves = new ArrayList<>();
    private int looks;

    private ColourExchange(CutAnswer answer, int looks, ColourGoal goal) {
        this.cutJob = answer.job();
        this.job = cutJob.job();
        this.state = new Exchanged(job, answer.found());
        this.looks = looks;
        this.shaken = goal.parameters().search().shaken();
        String hearth = cutJob.piece(answer.found().partsOf(0).get(0).piece().id())
                .fabric()
                .name();
        this.colours = new ExchangedColours(cutJob, state, hearth, goal);
    }

    /**
     * The answer with its colours where they lie best.
     *
     * @param looks how many exchanges are looked at, at most
     */
    public static CutAnswer of(CutAnswer answer, int looks, long seed, ColourGoal goal) {
        ColourExchange exchange = new ColourExchange(answer, looks, goal);
        return exchange.run(answer, new SplittableRandom(seed));
    }

    private CutAnswer run(CutAnswer answer, SplittableRandom chance) {
        collect();
        double first = colours.amissMm();
        double best = descended(first);
        CutAnswer found = best < first - 1e-9 ? new CutAnswer(cutJob, state.plan()) : answer;
        while (looks > 0 && best > 0 && !moves.isEmpty()) {
            shake(chance);
            double now = descended(colours.amissMm());
            if (now < best - 1e-9) {
                best = now;
                found = new CutAnswer(cutJob, state.plan());
            }
        }
        return found;
    }

    private void shake(SplittableRandom chance) {
        for (int i = 0; i < shaken; i++) {
            Runnable move = moves.get(chance.nextInt(moves.size()));
            looks--;
            move.run();
            if (!state.stands()) {
                move.run();
            }
        }
    }

    /** Takes every exchange that helps, again and again, until none does; the amount that is then amiss. */
    private double descended(double from) {
        double now = from;
        boolean better = true;
        while (better && looks > 0) {
            better = false;
            for (int i = 0; i < moves.size() && looks > 0; i++) {
                looks--;
                moves.get(i).run();
                double then = state.stands() ? colours.amissMm() : Double.POSITIVE_INFINITY;
                if (then < now - 1e-9) {
                    now = then;
                    better = true;
                } else {
                    moves.get(i).run();
                }
            }
        }
        return now;
    }

    /** Every exchange there is; each undoes itself when it is run again. */
    private void collect() {
        for (int bar = 0; bar < state.bars(); bar++) {
            for (int part = 0; part < state.parts(bar); part++) {
                collect(bar, part);
            }
            for (int other = 0; other < bar; other++) {
                if (job.bars().get(bar).width() == job.bars().get(other).width()
                        && job.bars().get(bar).length() == job.bars().get(other).length()) {
                    int one = bar;
                    int two = other;
                    moves.add(() -> state.swapBars(one, two));
                }
            }
        }
        for (int tree = 0; tree < state.trees(); tree++) {
            pieces(tree);
        }
    }

    private void collect(int bar, int part) {
        Exchanged.Leaf leaf = state.leaf(bar, part);
        for (int other = 0; other <= bar; other++) {
            for (int next = 0; next < state.parts(other) && (other < bar || next < part); next++) {
                Exchanged.Leaf that = state.leaf(other, next);
                boolean equal = leaf.width() == that.width() && leaf.length() == that.length();
                if (other == bar || equal) {
                    int otherBar = other;
                    int otherPart = next;
                    moves.add(() -> swap(bar, part, otherBar, otherPart));
                }
            }
        }
    }

    /** After whole bars were exchanged a part may not be there any more; then the exchange is none. */
    private void swap(int bar, int part, int other, int next) {
        if (part >= state.parts(bar) || next >= state.parts(other)) {
            return;
        }
        Exchanged.Leaf one = state.leaf(bar, part);
        Exchanged.Leaf two = state.leaf(other, next);
        if (bar == other || (one.width() == two.width() && one.length() == two.length())) {
            state.swapParts(bar, part, other, next);
        }
    }

    private void pieces(int tree) {
        StockPiece mine = state.piece(tree);
        for (StockPiece piece : job.stock()) {
            if (piece.width() == mine.width()
                    && piece.length() == mine.length()
                    && piece.fabric() != mine.fabric()
                    && !isSame(piece, mine)) {
                moves.add(new Trade(tree, piece));
            }
        }
    }

    private static boolean isSame(StockPiece one, StockPiece other) {
        return one.id() == other.id();
    }

    /** Cuts a tree from another piece of the same size, and back from the first when run again. */
    private final class Trade implements Runnable {
        private final int tree;
        private StockPiece other;

        Trade(int tree, StockPiece other) {
            this.tree = tree;
            this.other = other;
        }

        @Override
        public void run() {
            StockPiece was = state.piece(tree);
            state.cutFrom(tree, other);
            other = was;
        }
    }
}
