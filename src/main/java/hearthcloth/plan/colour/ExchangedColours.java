package hearthcloth.plan.colour;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.job.StockPiece;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.plan.fit.CutJob;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.parameter.ColourParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is amiss in a cloth whose parts are being exchanged. Only bars whose parts have changed are looked at again, with
 * the bars they meet; the sum is taken anew each time, so that it does not drift.
 */
final class ExchangedColours {

    /** What a bar of several fabrics counts, in millimetres of edge, as {@link ColourFigures#amissMm} has it. */
    private static final double MIXED = ColourParameters.standard().faults().mixed();

    private final CutJob job;
    private final Exchanged state;
    private final EdgeBill bill;
    private final Tile hearth;
    private final int[] numbers;
    private final double mark;
    private final List<BarAt> bars = new ArrayList<>();
    private final List<Pair> pairs = new ArrayList<>();
    private final double[] costs;
    private final double right;
    private final double bottom;

    /** Two bars that meet, or the hearth, which is -1, and a bar. */
    private record Pair(int one, int other, EdgeBill.Weight weight) {}

    /** A bar: where it lies, in millimetres, and what lies in it now. */
    private static final class BarAt {
        private final Tile whole;
        private final boolean upright;
        /** What the search's position of a join is more than its finished place. */
        private final double offset;
        /** Of which leaf and of which piece each part is, by their numbers. */
        private int[] parts = {};

        private List<Tile> tiles = List.of();
        private boolean changed;
        private boolean mixed;
        private double light;
        private double x;
        private double y;

        private BarAt(Tile whole, boolean upright, double offset) {
            this.whole = whole;
            this.upright = upright;
            this.offset = offset;
        }
    }

    ExchangedColours(CutJob job, Exchanged state, String hearth, ColourGoal goal) {
        this.job = job;
        this.state = state;
        this.mark = job.mark().in(Unit.MILLIMETRE);
        FabricDifferences differences = new FabricDifferences(job.fabrics());
        this.bill = goal.bill(differences, job.design().layout().finished());
        List<StockPiece> stock = job.job().stock();
        this.numbers = new int[stock.stream().mapToInt(StockPiece::id).max().orElse(0) + 1];
        stock.forEach(piece -> numbers[piece.id()] =
                differences.number(job.piece(piece.id()).fabric().name()));
        this.hearth = ColourFigures.tile(
                0, differences.number(hearth), job.laidHearth().at());
        double[] most = {this.hearth.right(), this.hearth.bottom()};
        for (int bar = 0; bar < state.bars(); bar++) {
            BarAt at = place(bar);
            bars.add(at);
            most[0] = Math.max(most[0], at.whole.right());
            most[1] = Math.max(most[1], at.whole.bottom());
        }
        this.right = most[0];
        this.bottom = most[1];
        pair();
        this.costs = new double[pairs.size()];
    }

    private BarAt place(int bar) {
        Laid laid = job.laidBar(bar);
        Layout.Slot slot = job.slots().get(bar);
        Length offset =
                Design.firstEnd(laid, slot).plus(job.design().making().seam().wide());
        return new BarAt(
                ColourFigures.tile(bar + 1, 0, laid.at()), slot.place().side().isUpright(), offset.in(Unit.MILLIMETRE));
    }

    private void pair() {
        for (int bar = 0; bar < bars.size(); bar++) {
            Tile one = bars.get(bar).whole;
            if (hearth.meets(one) > 0) {
                pairs.add(new Pair(-1, bar, bill.weight(hearth, one)));
            }
            for (int other = 0; other < bar; other++) {
                Tile two = bars.get(other).whole;
                if (one.meets(two) > 0) {
                    pairs.add(new Pair(other, bar, bill.weight(two, one)));
                }
            }
        }
    }

    /** All of it as the parts lie now. */
    double amissMm() {
        double light = bill.front().lightness(hearth.fabric()) * hearth.areaMm2();
        double x = light * hearth.middleX();
        double y = light * hearth.middleY();
        double sum = 0;
        for (int bar = 0; bar < bars.size(); bar++) {
            BarAt at = bars.get(bar);
            look(bar, at);
            light += at.light;
            x += at.x;
            y += at.y;
            sum += at.mixed ? MIXED : 0;
        }
        for (int pair = 0; pair < costs.length; pair++) {
            Pair two = pairs.get(pair);
            if (bars.get(two.other).changed || (two.one >= 0 && bars.get(two.one).changed)) {
                costs[pair] = cost(two);
            }
            sum += costs[pair];
        }
        return sum + unbalanced(light, x, y);
    }

    private double unbalanced(double light, double x, double y) {
        if (light == 0) {
            return 0;
        }
        double offX = x / light - right / 2;
        double offY = y / light - bottom / 2;
        return ColourFigures.unbalancedMm(Math.sqrt(offX * offX + offY * offY) / Math.max(right, bottom));
    }

    private double cost(Pair two) {
        double sum = 0;
        for (Tile bar : bars.get(two.other).tiles) {
            if (two.one < 0) {
                sum += hearth.meets(bar) * bill.ofHearth(hearth.fabric(), bar.fabric(), two.weight);
            } else {
                for (Tile other : bars.get(two.one).tiles) {
                    sum += bar.meets(other) * bill.ofBars(bar.fabric(), other.fabric(), two.weight);
                }
            }
        }
        return sum;
    }

    /** Looks whether a bar has other parts than before. */
    private void look(int bar, BarAt at) {
        int count = state.parts(bar);
        int[] parts = new int[2 * count];
        for (int part = 0; part < count; part++) {
            parts[2 * part] = state.leafNumber(bar, part);
            parts[2 * part + 1] = state.pieceOf(bar, part).id();
        }
        at.changed = !Arrays.equals(parts, at.parts);
        if (at.changed) {
            at.parts = parts;
            lay(bar, at);
        }
    }

    private void lay(int bar, BarAt at) {
        Tile whole = at.whole;
        double start = at.upright ? whole.y() : whole.x();
        double last = at.upright ? whole.bottom() : whole.right();
        double from = start;
        int parts = state.parts(bar);
        List<Tile> tiles = new ArrayList<>();
        at.light = 0;
        at.x = 0;
        at.y = 0;
        at.mixed = false;
        for (int part = 0; part < parts; part++) {
            double end = part + 1 < parts ? start + state.join(bar, part) * mark - at.offset : last;
            int fabric = numbers[state.pieceOf(bar, part).id()];
            Tile tile = at.upright
                    ? new Tile(bar + 1, fabric, whole.x(), from, whole.right(), end)
                    : new Tile(bar + 1, fabric, from, whole.y(), end, whole.bottom());
            double weight = bill.front().lightness(fabric) * tile.areaMm2();
            at.light += weight;
            at.x += weight * tile.middleX();
            at.y += weight * tile.middleY();
            at.mixed |= part > 0 && fabric != tiles.get(0).fabric();
            tiles.add(tile);
            from = end;
        }
        at.tiles = tiles;
    }
}
