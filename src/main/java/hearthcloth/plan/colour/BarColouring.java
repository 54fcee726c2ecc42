package hearthcloth.plan.colour;

import java.util.ArrayList;
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
