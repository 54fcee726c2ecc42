package hearthcloth.plan.cutjoin;

/**
 * What a plan costs. Areas are in square units.
 *
 * @param joins in all bars
 * @param cuts straight cuts in all pieces
 * @param usedArea of all parts
 * @param offcutArea of leftovers of used pieces whose sides both reach the least offcut
 * @param sliverArea of the other leftovers: lost
 */
public record Figures(int joins, int cuts, double usedArea, double offcutArea, double sliverArea) {

    /** Area of all used pieces. */
    public double touchedArea() {
        return usedArea + offcutArea + sliverArea;
    }
}
