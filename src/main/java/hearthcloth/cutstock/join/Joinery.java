package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.Reworkable;
import hearthcloth.cutstock.search.SearchParameters;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Bars, the strips they are pieced from, and the work of piecing: the state that ruin and recreate changes.
 *
 * <p>A ruin takes a few bars apart that share strips or could share them; the recreation pieces them one by one. A bar
 * is pieced as {@link BarPiecing} describes: from few strips or remainders, and so that one long remainder is worth more
 * than several short ones. Bin packing with item fragmentation (docs/sources.md#fragmented-packing) shows why this
 * works: in a connected set of strips and bars the joins are the strips less one, whatever the cutting. So fewest joins
 * means few strips in many separate sets, which is what exact fits and long remainders bring about.
 *
 * <p>From time to time {@link JoinReduction} tries to save a join, or to piece a missing bar, by dividing whole sets anew.
 *
 * <p>Every attempt obeys all rules. A bar that cannot be pieced is begun with what there is, after all others; it costs
 * more than any join, and more the more is lacking, so that the search can see what brings it nearer. One rework costs
 * O(r (p log p)) for r bars and p places.
 */
public final class Joinery implements Reworkable {

    /** A missing bar outweighs every other good by this. */
    private static final double MISSING_FIRST = 1e6;

    private final StripSource strips;
    private final Piecework now;
    private final Piecework saved;
    private final BarPiecing piecing;
    private final double unit;
    private final int[] order;
    private final boolean[] ruined;
    private final JoinReduction evening;
    private final SearchParameters parameters;
    private int untilEvening;

    /** Starts with nothing pieced. */
    public Joinery(List<WantedBar> bars, StripSource strips, JoinRules rules, long loss, SearchParameters parameters) {
        this.parameters = parameters;
        this.untilEvening = parameters.reduction().first();
        this.strips = strips;
        this.now = new Piecework(bars, strips.slots(), loss);
        this.saved = new Piecework(bars, strips.slots(), loss);
        this.unit =
                Math.max(1, bars.stream().mapToLong(WantedBar::length).average().orElse(1));
        StripCandidates offers = new StripCandidates();
        this.evening = new JoinReduction(now, strips, rules, offers, loss, parameters.reduction());
        this.piecing = new BarPiecing(now, strips, rules, offers, loss, unit, parameters.piecing());
        this.order = new int[bars.size()];
        this.ruined = new boolean[bars.size()];
    }

    /** The present state of piecing. */
    public Piecework work() {
        return now;
    }

    /** Pieces every bar that is not pieced, longest first. */
    public void build(SplittableRandom chance) {
        rebuild(chance, true);
    }

    @Override
    public void rework(SplittableRandom chance) {
        if (--untilEvening == 0) {
            even(chance);
            return;
        }
        int bars = now.bars();
        int most = chance.nextInt(8) == 0 ? Math.max(2, bars / 2) : Math.min(bars, 4);
        int count = 1 + chance.nextInt(most);
        int last = now.missing() > 0 && chance.nextBoolean() ? now.someMissing(chance) : chance.nextInt(bars);
        if (!now.pieced(last) && chance.nextBoolean()) {
            makeRoom(last, chance);
        } else if (chance.nextInt(4) == 0 && now.parts(last) > 0) {
            takeAllFrom(strips.origin(now.strip(last, chance.nextInt(now.parts(last)))));
        }
        take(last);
        for (int i = 1; i < count; i++) {
            int next = chance.nextInt(3) == 0 ? chance.nextInt(bars) : related(last, chance);
            take(next);
            last = next;
        }
        rebuild(chance, false);
    }

    private void even(SplittableRandom chance) {
        boolean going = true;
        while (going) {
            dropBegun();
            going = evening.win(chance);
        }
        untilEvening = parameters.reduction().every();
        rebuild(chance, false);
    }

    /** Takes apart the bars that are only begun. */
    private void dropBegun() {
        for (int bar = 0; bar < now.bars() && now.missing() > 0; bar++) {
            if (!now.pieced(bar) && now.parts(bar) > 0) {
                now.remove(bar, strips);
            }
        }
    }

    /** Takes all bars apart that have a part from one place from which this bar could be pieced. */
    private void makeRoom(int bar, SplittableRandom chance) {
        int[] kinds = now.kinds(bar);
        int[] places = strips.places(kinds[chance.nextInt(kinds.length)]);
        if (places.length > 0) {
            takeAllFrom(strips.originOf(places[chance.nextInt(places.length)]));
        }
    }

    /** Takes all bars apart that have a part from this origin, so that it can be cut in another way. */
    private void takeAllFrom(int origin) {
        for (int bar = 0; bar < now.bars(); bar++) {
            for (int i = 0; i < now.parts(bar); i++) {
                if (strips.origin(now.strip(bar, i)) == origin) {
                    take(bar);
                    break;
                }
            }
        }
    }

    private void take(int bar) {
        if (now.parts(bar) > 0) {
            now.remove(bar, strips);
        }
        ruined[bar] = true;
    }

    /** Another bar that may be pieced from the same strips; one that shares a strip if chance finds one. */
    private int related(int bar, SplittableRandom chance) {
        int found = bar;
        for (int attempt = 0; attempt < 6; attempt++) {
            int other = chance.nextInt(now.bars());
            if (!ruined[other] && now.kindred(bar, other)) {
                found = other;
                if (now.share(saved, bar, other)) {
                    return other;
                }
            }
        }
        return found;
    }

    private void rebuild(SplittableRandom chance, boolean longestFirst) {
        dropBegun();
        int count = 0;
        for (int bar = 0; bar < now.bars(); bar++) {
            if (now.parts(bar) == 0) {
                order[count++] = bar;
            }
            ruined[bar] = false;
        }
        arrange(count, longestFirst ? 0 : chance.nextInt(4), chance);
        for (int i = 0; i < count; i++) {
            piecing.piece(order[i], longestFirst, chance);
        }
        for (int i = 0; i < count && now.missing() > 0; i++) {
            if (!now.pieced(order[i])) {
                piecing.begin(order[i]);
            }
        }
    }

    /** Puts the first bars of the order by how hard they are, or, of four ways in two, by lot. */
    private void arrange(int count, int way, SplittableRandom chance) {
        for (int i = 1; i < count; i++) {
            int bar = order[i];
            int j = way >= 2 ? chance.nextInt(i + 1) : i;
            if (way >= 2) {
                order[i] = order[j];
                order[j] = bar;
            } else {
                for (; j > 0 && harder(bar, order[j - 1]); j--) {
                    order[j] = order[j - 1];
                }
                order[j] = bar;
            }
        }
    }

    /** Whether a bar is harder to piece than another: one that may not be joined is, otherwise a longer one. */
    private boolean harder(int bar, int other) {
        boolean whole = now.mostParts(bar) == 1;
        boolean otherWhole = now.mostParts(other) == 1;
        return whole == otherWhole ? now.length(bar) > now.length(other) : whole;
    }

    @Override
    public double cost() {
        double spread = 0;
        for (int slot = 0, limit = strips.openLimit(); slot < limit; slot++) {
            if (strips.isOpen(slot)) {
                double whole = strips.whole(slot) / unit;
                double rest = (strips.length(slot) - now.used()[slot]) / unit;
                spread += whole * whole - rest * rest;
            }
        }
        double lacking =
                Math.max(parameters.costs().lacking(), 1 + 2.0 * now.joins() / Math.max(1, now.bars() - now.missing()));
        return now.joins()
                + (double) now.mostJoins() * now.missing()
                + lacking * now.missingLength() / unit
                + parameters.piecing().spread() * spread
                + strips.cost(now.used());
    }

    /** The quality of the attempt by the order of goods, less being better: missing bars count most, then joins. */
    public double merit() {
        return MISSING_FIRST * (now.missing() + now.missingLength() / unit)
                + now.joins()
                + parameters.costs().second() * strips.cost(now.used());
    }

    @Override
    public void save() {
        saved.copy(now);
        strips.save();
    }

    @Override
    public void restore() {
        now.copy(saved);
        strips.restore();
    }
}
