package hearthcloth.plan.colour;

import hearthcloth.plan.parameter.ColourParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which fabric each bar is of, as a problem by itself: what a bar of a fabric costs alone, what two bars cost where
 * they meet, how much there is of each fabric. Costs are millimetres of edge, as {@link ColourGoal#amissMm} adds
 * them up for a cloth whose bars are in one piece. Immutable.
 */
final class BarColouring {

    /** Another bar, the millimetres of edge that are shared with it, and what each counts. */
    record Meeting(int other, double mm, EdgeBill.Weight weight) {}

    private final List<Tile> bars;
    private final Tile hearth;
    private final EdgeBill bill;
    private final int[] numbers;
    private final double[][] alone;
    private final double[] room;
    private final double right;
    private final double bottom;
    private final List<List<Meeting>> meetings = new ArrayList<>();

    /**
     * A problem.
     *
     * @param hearth of its fabric, as {@code bill} numbers it
     * @param bars each in one piece, of whatever fabric
     * @param numbers of the fabrics to choose from
     * @param before what a bar of a fabric costs beside colour; infinite where it cannot be
     * @param room how much there is of each, in square millimetres
     */
    BarColouring(Tile hearth, List<Tile> bars, EdgeBill bill, int[] numbers, double[][] before, double[] room) {
        this.bars = List.copyOf(bars);
        this.hearth = hearth;
        this.bill = bill;
        this.numbers = numbers.clone();
        this.room = room.clone();
        this.alone = new double[bars.size()][];
        double[] most = {hearth.right(), hearth.bottom()};
        for (int bar = 0; bar < bars.size(); bar++) {
            alone[bar] = alone(bar, before[bar]);
            most[0] = Math.max(most[0], bars.get(bar).right());
            most[1] = Math.max(most[1], bars.get(bar).bottom());
        }
        this.right = most[0];
        this.bottom = most[1];
        meetings.addAll(meetings());
    }

    private double[] alone(int bar, double[] before) {
        double[] costs = before.clone();
        double meets = hearth.meets(bars.get(bar));
        if (meets > 0) {
            EdgeBill.Weight weight = bill.weight(hearth, bars.get(bar));
            for (int fabric = 0; fabric < numbers.length; fabric++) {
                costs[fabric] += meets * bill.ofHearth(hearth.fabric(), numbers[fabric], weight);
            }
        }
        return costs;
    }

    private List<List<Meeting>> meetings() {
        List<List<Meeting>> found = new ArrayList<>();
        for (int bar = 0; bar < bars.size(); bar++) {
            found.add(new ArrayList<>());
            for (int other = 0; other < bar; other++) {
                double mm = bars.get(bar).meets(bars.get(other));
                if (mm > 0) {
                    EdgeBill.Weight weight = bill.weight(bars.get(bar), bars.get(other));
                    found.get(bar).add(new Meeting(other, mm, weight));
                    found.get(other).add(new Meeting(bar, mm, weight));
                }
            }
        }
        return found.stream().map(List::copyOf).toList();
    }

    int bars() {
        return bars.size();
    }

    int fabrics() {
        return numbers.length;
    }

    /** What a bar costs by itself, its edge with the hearth included. */
    double alone(int bar, int fabric) {
        return alone[bar][fabric];
    }

    /** What it costs that two bars of these fabrics meet. */
    double between(Meeting meeting, int one, int other) {
        return meeting.mm * bill.ofBars(numbers[one], numbers[other], meeting.weight);
    }

    /** The bars a bar shares an edge with. */
    List<Meeting> meetingsOf(int bar) {
        return meetings.get(bar);
    }

    /** The area a bar takes, in square millimetres. */
    double area(int bar) {
        return bars.get(bar).areaMm2();
    }

    /** How much there is of a fabric for bars, in square millimetres. */
    double room(int fabric) {
        return room[fabric];
    }

    /** What a whole choice costs because its lightness lies off the middle. */
    double unbalanced(int[] chosen) {
        return new Light(chosen).unbalancedMm();
    }

    /**
     * What bars and meetings cost, as tables. What a meeting costs may be moved to its two bars, so that what each bar costs
     * at least by itself says more of the whole; what a whole choice costs stays the same. For one search.
     */
    final class Tables {

        private static final int ROUNDS =
                ColourParameters.standard().search().branching().rounds();

        private final double[][] alone = new double[bars()][];
        private final double[][][][] between = new double[bars()][][][];
        /** For each meeting of a bar, which of the other's meetings it is. */
        private final int[][] mirrored = new int[bars()][];

        Tables() {
            for (int bar = 0; bar < bars(); bar++) {
                alone[bar] = BarColouring.this.alone[bar].clone();
                List<Meeting> mine = meetings.get(bar);
                between[bar] = new double[mine.size()][fabrics()][fabrics()];
                mirrored[bar] = new int[mine.size()];
                for (int at = 0; at < mine.size(); at++) {
                    fill(between[bar][at], mine.get(at));
                    mirrored[bar][at] = mirror(bar, mine.get(at).other);
                }
            }
        }

        private void fill(double[][] table, Meeting meeting) {
            for (int one = 0; one < table.length; one++) {
                for (int other = 0; other < table.length; other++) {
                    table[one][other] = BarColouring.this.between(meeting, one, other);
                }
            }
        }

        private int mirror(int bar, int other) {
            List<Meeting> theirs = meetings.get(other);
            int at = 0;
            while (theirs.get(at).other != bar) {
                at++;
            }
            return at;
        }

        /** What each bar costs by itself, for each fabric. */
        double[][] alone() {
            return alone.clone();
        }

        /** What a bar of a fabric costs at least where it meets the bars inside it, whatever those are of. */
        double[][] inside() {
            double[][] costs = new double[bars()][fabrics()];
            for (int bar = 0; bar < costs.length; bar++) {
                for (int at = 0; at < between[bar].length; at++) {
                    for (int one = 0; meetings.get(bar).get(at).other < bar && one < costs[bar].length; one++) {
                        costs[bar][one] +=
                                Arrays.stream(between[bar][at][one]).min().orElse(0);
                    }
                }
            }
            return costs;
        }

        /** The costs of the bars inside a bar that is of this fabric, beside those they have already. */
        double[][] beside(int bar, int fabric, double[][] costs) {
            double[][] then = Arrays.copyOf(costs, bar);
            for (int at = 0; at < between[bar].length; at++) {
                int inner = meetings.get(bar).get(at).other;
                if (inner < bar) {
                    then[inner] = then[inner].clone();
                    for (int other = 0; other < then[inner].length; other++) {
                        then[inner][other] += between[bar][at][fabric][other];
                    }
                }
            }
            return then;
        }

        /** What it costs that two bars of these fabrics meet, by the number of the meeting among the first's. */
        double between(int bar, int meeting, int one, int other) {
            return between[bar][meeting][one][other];
        }

        /**
         * Moves costs from meetings to bars and on, bar by bar outwards and back again: each bar hands an equal share of what it
         * costs to the meetings ahead, each meeting hands on what it costs at least (sequential tree-reweighted message
         * passing: docs/sources.md#spread-costs).
         */
        void spread() {
            for (int round = 0; round < ROUNDS; round++) {
                for (int bar = 0; bar < alone.length; bar++) {
                    handOn(bar, 1);
                }
                for (int bar = alone.length - 1; bar >= 0; bar--) {
                    handOn(bar, -1);
                }
            }
        }

        private void handOn(int bar, int way) {
            List<Meeting> mine = meetings.get(bar);
            int ahead = 0;
            for (int at = 0; at < mine.size(); at++) {
                gather(bar, at);
                ahead += (mine.get(at).other - bar) * way > 0 ? 1 : 0;
            }
            double share = 1.0 / Math.max(1, Math.max(ahead, mine.size() - ahead));
            double[] whole = alone[bar].clone();
            for (int at = 0; at < mine.size(); at++) {
                if ((mine.get(at).other - bar) * way > 0) {
                    for (int one = 0; one < whole.length; one++) {
                        moved(bar, at, one, whole[one] == Double.POSITIVE_INFINITY ? 0 : -share * whole[one]);
                    }
                    gather(mine.get(at).other, mirrored[bar][at]);
                }
            }
        }

        /** Moves what a meeting costs at least, for each fabric of a bar, to that bar. */
        private void gather(int bar, int at) {
            int other = meetings.get(bar).get(at).other;
            for (int one = 0; one < alone[bar].length; one++) {
                double least = Double.POSITIVE_INFINITY;
                for (int two = 0; two < alone[bar].length; two++) {
                    if (alone[other][two] < Double.POSITIVE_INFINITY) {
                        least = Math.min(least, between[bar][at][one][two]);
                    }
                }
                moved(bar, at, one, least == Double.POSITIVE_INFINITY ? 0 : least);
            }
        }

        private void moved(int bar, int at, int one, double by) {
            int other = meetings.get(bar).get(at).other;
            alone[bar][one] += by;
            for (int two = 0; two < alone[bar].length; two++) {
                between[bar][at][one][two] -= by;
                between[other][mirrored[bar][at]][two][one] -= by;
            }
        }
    }

    /** The light of a whole choice and where it lies, kept up to date bar by bar. */
    final class Light {
        private double light = bill.front().lightness(hearth.fabric()) * hearth.areaMm2();
        private double x = light * hearth.middleX();
        private double y = light * hearth.middleY();

        Light(int[] chosen) {
            for (int bar = 0; bar < chosen.length; bar++) {
                add(bar, chosen[bar], 1);
            }
        }

        /** Adds a bar of a fabric, or takes it away with a {@code sign} of -1. */
        void add(int bar, int fabric, int sign) {
            Tile at = bars.get(bar);
            double weight = sign * bill.front().lightness(numbers[fabric]) * at.areaMm2();
            light += weight;
            x += weight * at.middleX();
            y += weight * at.middleY();
        }

        double unbalancedMm() {
            if (light < 1) {
                return 0;
            }
            double offX = x / light - right / 2;
            double offY = y / light - bottom / 2;
            return ColourFigures.unbalancedMm(Math.sqrt(offX * offX + offY * offY) / Math.max(right, bottom));
        }
    }
}
