package hearthcloth.cutstock.job;

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
public record CutFigures(int joins, int cuts, double usedArea, double offcutArea, double sliverArea)
        implements Comparable<CutFigures> {

    private static final Comparator<CutFigures> ORDER_OF_GOODS = Comparator.comparingInt(CutFigures::joins)
            .thenComparingInt(CutFigures::cuts)
            .thenComparingDouble(CutFigures::sliverArea)
            .thenComparingDouble(CutFigures::touchedArea);

    /** Area of all used pieces. */
    public double touchedArea() {
        return usedArea + offcutArea + sliverArea;
    }

    /** The order of goods: fewer joins, then fewer cuts, then less lost, then less fabric cut into. */
    @Override
    public int compareTo(CutFigures other) {
        return ORDER_OF_GOODS.compare(this, other);
    }
}
