package hearthcloth.plan.cutjoin;

import java.util.Comparator;

/**
 * What a plan costs. Areas are in square units.
 *
 * @param joins in all bars
 * @param cuts straight cuts in all pieces
 * @param usedArea of all parts
 * @param offcutArea of leftovers of used pieces whose sides both reach the least offcut
 * @param sliverArea of the other leftovers: lost
 */
public record Figures(int joins, int cuts, double usedArea, double offcutArea, double sliverArea)
        implements Comparable<Figures> {

    private static final Comparator<Figures> ORDER_OF_GOODS = Comparator.comparingInt(Figures::joins)
            .thenComparingInt(Figures::cuts)
            .thenComparingDouble(Figures::sliverArea)
            .thenComparingDouble(Figures::touchedArea);

    /** Area of all used pieces. */
    public double touchedArea() {
        return usedArea + offcutArea + sliverArea;
    }

    /** The order of goods: fewer joins, then fewer cuts, then less lost, then less fabric cut into. */
    @Override
    public int compareTo(Figures other) {
        return ORDER_OF_GOODS.compare(this, other);
    }
}
