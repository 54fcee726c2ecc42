package hearthcloth.plan.propose;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.plan.model.Plan;
import java.util.ArrayList;
import java.util.List;

/** How close joins come to what ends on the other side of the seam they run into, read off the patches alone. */
final class JoinSpread {

    private JoinSpread() {}

    /** Every join that has the corner of a patch of another bar, or of the hearth, within the clearance. */
    static List<String> tooClose(Plan plan) {
        List<String> faults = new ArrayList<>();
        for (Laid laid : plan.cloth().laid()) {
            if (laid.patch().place() instanceof Place.Bar bar && bar.part() > 1) {
                for (Laid other : plan.cloth().laid()) {
                    if (!isOfBar(other, bar)
                            && meets(laid.at(), other.at(), bar.side().isUpright(), plan)) {
                        faults.add(bar.id() + " is joined beside an end of "
                                + other.patch().place().id());
                    }
                }
            }
        }
        return faults;
    }

    private static boolean isOfBar(Laid laid, Place.Bar bar) {
        return laid.patch().place() instanceof Place.Bar other
                && other.round() == bar.round()
                && other.order() == bar.order();
    }

    /** The join is at the part's top in an upright bar, at its left in one that lies across. */
    private static boolean meets(Rect part, Rect other, boolean upright, Plan plan) {
        Length clearance = plan.rules().clearance();
        boolean onOneLine = upright
                ? part.x().equals(other.right()) || part.right().equals(other.x())
                : part.y().equals(other.bottom()) || part.bottom().equals(other.y());
        Length join = upright ? part.y() : part.x();
        Length from = upright ? other.y() : other.x();
        Length to = upright ? other.bottom() : other.right();
        return onOneLine
                && (apart(join, from).isLessThan(clearance) || apart(join, to).isLessThan(clearance));
    }

    private static Length apart(Length one, Length other) {
        return one.isLessThan(other) ? other.minus(one) : one.minus(other);
    }
}
