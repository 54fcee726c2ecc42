package hearthcloth.plan.colour;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.job.CutJoinJob;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.plan.fit.CutAnswer;
import hearthcloth.plan.fit.CutJob;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.stash.Fabric;
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

    /** Exchanges tried at random before a new descent. */
    private static final int SHAKE = 4;

    private final CutJob cutJob;
    private final CutJoinJob job;
    private final Exchanged state;
    private final FabricDifferences differences;
    private final List<Runnable> moves = new ArrayList<>();
    private final Tile hearth;
    private final int[] numbers;
    private final List<BarAt> places = new ArrayList<>();
    private final double mark;
    private final Contrast wanted;
    private int looks;

    /**
     * Where a bar lies, in millimetres.
     *
     * @param offset what the search's position of a join is more than its finished place
     */
    private record BarAt(Tile whole, boolean upright, double offset) {}

    private ColourExchange(CutAnswer answer, int looks, Contrast wanted) {
        this.wanted = wanted;
        this.cutJob = answer.job();
        this.job = cutJob.job();
        this.state = new Exchanged(job, answer.found());
        List<Fabric> fabrics = cutJob.fabrics();
        this.differences = new FabricDifferences(fabrics);
        this.looks = looks;
        this.mark = cutJob.mark().in(Unit.MILLIMETRE);
        this.numbers =
                new int[job.stock().stream().mapToInt(StockPiece::id).max().orElse(0) + 1];
        job.stock()
                .forEach(piece -> numbers[piece.id()] =
                        differences.number(cutJob.piece(piece.id()).fabric().name()));
        for (int bar = 0; bar < state.bars(); bar++) {
            places.add(place(bar));
        }
        String name = cutJob.piece(answer.found().partsOf(0).get(0).piece().id())
                .fabric()
                .name();
        this.hearth = ColourFigures.tile(
                0, differences.number(name), cutJob.laidHearth().at());
    }

    /**
     * The answer with its colours where they lie best.
     *
     * @param looks how many exchanges are looked at, at most
     */
    public static CutAnswer of(CutAnswer answer, int looks, long seed, Contrast wanted) {
        ColourExchange exchange = new ColourExchange(answer, looks, wanted);
        return exchange.run(answer, new SplittableRandom(seed));
    }

    private CutAnswer run(CutAnswer answer, SplittableRandom chance) {
        collect();
        double first = amiss();
        double best = descended(first);
        CutAnswer found = best < first - 1e-9 ? new CutAnswer(cutJob, state.plan()) : answer;
        while (looks > 0 && best > 0 && !moves.isEmpty()) {
            shake(chance);
            double now = descended(amiss());
            if (now < best - 1e-9) {
                best = now;
                found = new CutAnswer(cutJob, state.plan());
            }
        }
        return found;
    }

    private void shake(SplittableRandom chance) {
        for (int i = 0; i < SHAKE; i++) {
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
                double then = state.stands() ? amiss() : Double.POSITIVE_INFINITY;
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

    private double amiss() {
        List<Tile> tiles = new ArrayList<>();
        tiles.add(hearth);
        for (int bar = 0; bar < state.bars(); bar++) {
            add(tiles, bar);
        }
        return ColourFigures.of(tiles, differences).amissMm(wanted);
    }

    private BarAt place(int bar) {
        Laid laid = cutJob.laidBar(bar);
        Layout.Slot slot = cutJob.slots().get(bar);
        Length offset =
                Design.firstEnd(laid, slot).plus(cutJob.design().making().seam().wide());
        return new BarAt(
                ColourFigures.tile(bar + 1, 0, laid.at()), slot.place().side().isUpright(), offset.in(Unit.MILLIMETRE));
    }

    private void add(List<Tile> tiles, int bar) {
        BarAt at = places.get(bar);
        Tile whole = at.whole();
        double start = at.upright() ? whole.y() : whole.x();
        double from = start;
        int parts = state.parts(bar);
        for (int part = 0; part < parts; part++) {
            double last = at.upright() ? whole.bottom() : whole.right();
            double end = part + 1 < parts ? start + state.join(bar, part) * mark - at.offset() : last;
            int fabric = numbers[state.pieceOf(bar, part).id()];
            tiles.add(
                    at.upright()
                            ? new Tile(bar + 1, fabric, whole.x(), from, whole.right(), end)
                            : new Tile(bar + 1, fabric, from, whole.y(), end, whole.bottom()));
            from = end;
        }
    }
}
