package hearthcloth.plan.colour;

import hearthcloth.plan.model.Contrast;
import java.util.ArrayList;
import java.util.List;

/**
 * Which fabric each bar is of, as a problem by itself: what a bar of a fabric costs alone, what two bars cost where
 * they meet, how much there is of each fabric. Costs are millimetres of edge, as {@link ColourFigures#amissMm} adds
 * them up for a cloth whose bars are in one piece. Immutable.
 */
final class BarColouring {

    /** Another bar, and the millimetres of edge that are shared with it. */
    record Meeting(int other, double mm) {}

    private final List<Tile> bars;
    private final Tile hearth;
    private final FabricDifferences differences;
    private final int[] numbers;
    private final EdgeCost cost;
    private final double[][] alone;
    private final double[][] between;
    private final double[] room;
    private final List<List<Meeting>> meetings = new ArrayList<>();

    /**
     * A problem.
     *
     * @param hearth of its fabric, as {@code differences} numbers it
     * @param bars each in one piece, of whatever fabric
     * @param numbers of the fabrics to choose from
     * @param before what a bar of a fabric costs beside colour; infinite where it cannot be
     * @param room how much there is of each, in square millimetres
     */
    BarColouring(
            Tile hearth,
            List<Tile> bars,
            FabricDifferences differences,
            int[] numbers,
            Contrast wanted,
            double[][] before,
            double[] room) {
        this.bars = List.copyOf(bars);
        this.hearth = hearth;
        this.differences = differences;
        this.numbers = numbers.clone();
        this.cost = EdgeCost.of(wanted);
        this.room = room.clone();
        this.alone = new double[bars.size()][];
        this.between = new double[numbers.length][numbers.length];
        for (int one = 0; one < numbers.length; one++) {
            for (int other = 0; other < numbers.length; other++) {
                boolean isSame = numbers[one] == numbers[other];
                between[one][other] = cost.ofBars(isSame, differences.between(numbers[one], numbers[other]));
            }
        }
        for (int bar = 0; bar < bars.size(); bar++) {
            alone[bar] = alone(bar, before[bar]);
            meetings.add(meetings(bar));
        }
    }

    private double[] alone(int bar, double[] before) {
        double[] costs = before.clone();
        double meets = hearth.meets(bars.get(bar));
        for (int fabric = 0; fabric < numbers.length; fabric++) {
            double apart = differences.between(hearth.fabric(), numbers[fabric]);
            double gap = Math.abs(differences.lightness(hearth.fabric()) - differences.lightness(numbers[fabric]));
            costs[fabric] += meets * cost.ofHearth(hearth.fabric() == numbers[fabric], apart, gap);
        }
        return costs;
    }

    private List<Meeting> meetings(int bar) {
        List<Meeting> found = new ArrayList<>();
        for (int other = 0; other < bars.size(); other++) {
            double mm = other == bar ? 0 : bars.get(bar).meets(bars.get(other));
            if (mm > 0) {
                found.add(new Meeting(other, mm));
            }
        }
        return List.copyOf(found);
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

    /** What a millimetre between two fabrics costs. */
    double between(int one, int other) {
        return between[one][other];
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

    /** All of it for a whole choice; infinite where there is not enough of a fabric. */
    double cost(int[] chosen) {
        double[] left = room.clone();
        double sum = 0;
        for (int bar = 0; bar < chosen.length; bar++) {
            left[chosen[bar]] -= area(bar);
            if (left[chosen[bar]] < 0) {
                return Double.POSITIVE_INFINITY;
            }
            sum += alone[bar][chosen[bar]];
            for (Meeting meeting : meetings.get(bar)) {
                sum += meeting.other < bar ? meeting.mm * between[chosen[bar]][chosen[meeting.other]] : 0;
            }
        }
        return sum + unbalanced(chosen);
    }

    /** What a whole choice costs because its lightness lies off the middle. */
    double unbalanced(int[] chosen) {
        double light = differences.lightness(hearth.fabric()) * hearth.areaMm2();
        double x = light * hearth.middleX();
        double y = light * hearth.middleY();
        double right = hearth.right();
        double bottom = hearth.bottom();
        for (int bar = 0; bar < chosen.length; bar++) {
            Tile at = bars.get(bar);
            double weight = differences.lightness(numbers[chosen[bar]]) * at.areaMm2();
            light += weight;
            x += weight * at.middleX();
            y += weight * at.middleY();
            right = Math.max(right, at.right());
            bottom = Math.max(bottom, at.bottom());
        }
        double side = Math.max(right, bottom);
        return light == 0
                ? 0
                : ColourFigures.unbalancedMm(Math.hypot(x / light - right / 2, y / light - bottom / 2) / side);
    }
}
