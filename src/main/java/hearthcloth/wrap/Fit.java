package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one cloth does round one gift in one tie: what is left for each thing the tie needs.
 *
 * @param tail what each knotted corner should have for knot and tail
 * @param answers one for each demand of the tie
 */
public record Fit(Tie tie, Gift gift, Size cloth, Length tail, Placing placing, List<Answer> answers) {

    /**
     * One demand and what the cloth has for it.
     *
     * @param corner of the cloth, or null where the demand is on its edges
     * @param left beyond the path over the gift, rounded down; below zero when the cloth ends short of it
     * @param needed beyond that path
     */
    public record Answer(Reason reason, @Nullable Corner corner, Length left, Length needed, boolean enough) {

        static Answer of(Demand demand, Spread cloth) {
            return new Answer(
                    demand.reason(),
                    corner(demand.reach()),
                    Outward.there(demand.left(cloth)),
                    Outward.there(demand.spare()),
                    demand.isMet(cloth));
        }

        private static @Nullable Corner corner(Reach reach) {
            if (reach instanceof Reach.Tip tip) {
                return tip.corner();
            }
            if (reach instanceof Reach.Ray ray) {
                return ray.corner();
            }
            return reach instanceof Reach.FromBase from ? from.corner() : null;
        }

        /** What is left over; below zero when the cloth is short. */
        public Length spare() {
            return left.minus(needed);
        }
    }

    public Fit {
        answers = List.copyOf(answers);
    }

    /** True when every corner has its tail or tuck and the gift is covered. */
    public boolean holds() {
        return answers.stream().allMatch(Answer::enough);
    }

    /** The demand that is met most narrowly, or missed by most. */
    public Answer tightest() {
        return answers.stream().min(Comparator.comparing(Answer::spare)).orElseThrow();
    }

    /** The smallest cloth of these proportions that would do, with the gift placed in the same way. */
    Size wouldDo() {
        return tie.smallest(gift, tail, cloth, placing);
    }

    /** What sewing may take before the ends get shorter; empty where it is less than a mark of the ruler. */
    private String toSpare(Ruler ruler) {
        Length spare = ruler.mark(cloth.width().minus(wouldDo().width()), Rounding.DOWN);
        return spare.isPositive() ? " Sewn " + ruler.write(spare, Rounding.DOWN) + " smaller, it would still do." : "";
    }

    /** A sentence for the maker: that it ties and what is left, or what is short and which size would do. */
    public String sentence(Ruler ruler) {
        Answer worst = tightest();
        String about = gift.describe(ruler);
        if (holds()) {
            String does = tie.isKnotted() ? "ties round " : "wraps ";
            if (worst.spare().isLessThan(ruler.step())) {
                return "This cloth is just large enough for " + about + " with the " + tie.words() + "."
                        + (tie.isKnotted()
                                ? " It leaves " + ruler.write(tail, Rounding.NEAREST)
                                        + " at each knotted corner for the knot and its end."
                                : "");
            }
            return "This cloth " + does + about + " with the " + tie.words() + ", with "
                    + ruler.write(worst.spare(), Rounding.DOWN) + " more than it needs for "
                    + worst.reason().words() + "." + toSpare(ruler);
        }
        String lack = ruler.write(Length.ZERO.minus(worst.spare()), Rounding.UP);
        Corner corner = worst.corner();
        String where = corner == null ? "the cloth" : corner.words();
        Size enough = wouldDo();
        String size = enough.isSquare() ? ruler.write(enough.width(), Rounding.UP) : ruler.write(enough, Rounding.UP);
        return "This cloth is too small for " + about + " with the " + tie.words() + ": " + where + " is " + lack
                + " short for " + worst.reason().words() + ". A cloth of " + size + " is large enough.";
    }
}
