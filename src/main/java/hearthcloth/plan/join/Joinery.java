package hearthcloth.plan.join;

import hearthcloth.plan.search.Reworkable;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Bars, the strips they are pieced from, and the work of piecing: the attempt that ruin and recreate reworks.
 *
 * <p>A ruin takes a few bars apart that share strips or could; the recreation pieces them one by one. A bar is pieced
 * from the fewest strips or remainders possible (now and then one more), picked by several ways in turn, and the pick
 * kept that spoils least: a remainder counts by the square of its length, so one long remainder is worth more than
 * several short ones. Bin packing with item fragmentation (Casazza and Ceselli, Comput. Oper. Res. 46 (2014), from
 * memory) shows why this works: in a connected set of strips and bars the joins are the strips less one, whatever the
 * cutting, so fewest joins means few strips in many separate sets, which is what exact fits and long remainders bring.
 *
 * <p>Now and then {@link Evening} tries to win a join, or to piece what is missing, by dividing whole sets anew.
 *
 * <p>Every attempt obeys all rules; a bar that cannot be pieced is left out and costs more than any join. One rework
 * costs O(r (p log p)) for r bars and p places.
 */
public final class Joinery implements Reworkable {

    private static final double MISSING = 4;
    private static final double SPREAD = 0.1;
    private static final double MISSING_FIRST = 1e6;
    private static final double SECOND = 0.05;
    private static final int FIRST_EVENING = 32;
    private static final int EVENING = 256;
    private static final Selection.Way[] WAYS = Selection.Way.values();

    private final Strips strips;
    private final JoinRules rules;
    private final long loss;
    private final Piecework now;
    private final Piecework saved;
    private final Offers offers = new Offers();
    private final Selection selection;
    private final Parts trial;
    private final Parts best;
    private final double unit;
    private final int[] order;
    private final boolean[] ruined;
    private int bestKind;
    private final Evening evening;
    private int untilEvening = FIRST_EVENING;

    /** Starts with nothing pieced. */
    public Joinery(List<WantedBar> bars, Strips strips, JoinRules rules, long loss) {
        this.strips = strips;
        this.rules = rules;
        this.loss = loss;
        this.now = new Piecework(bars, strips.slots(), loss);
        this.saved = new Piecework(bars, strips.slots(), loss);
        this.selection = new Selection(offers, loss, now.capacity);
        this.trial = new Parts(now.capacity);
        this.best = new Parts(now.capacity);
        this.evening = new Evening(now, strips, rules, offers, loss);
        this.unit =
                Math.max(1, bars.stream().mapToLong(WantedBar::length).average().orElse(1));
        this.order = new int[bars.size()];
        this.ruined = new boolean[bars.size()];
    }

    /** What is pieced from what at the moment. */
    public Piecework work() {
        return now;
    }

    /** Pieces every bar that is not, longest first. */
    public void build(SplittableRandom chance) {
        rebuild(chance, true);
    }

    @Override
    public void rework(SplittableRandom chance) {
        if (--untilEvening == 0) {
            boolean going = true;
            while (going) {
                going = evening.win(chance);
            }
            untilEvening = EVENING;
            return;
        }
        int bars = now.bars();
        int most = chance.nextInt(8) == 0 ? Math.max(2, bars / 2) : Math.min(bars, 4);
        int count = 1 + chance.nextInt(most);
        int last = now.missing() > 0 && chance.nextBoolean() ? now.someMissing(chance) : chance.nextInt(bars);
        if (chance.nextInt(4) == 0 && now.parts(last) > 0) {
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

    /** Takes the bars apart that have a part from there, so that it can be cut another way. */
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

    /** Another bar that may be pieced from the same strips, one sharing a strip if the dice find one. */
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
        int count = 0;
        for (int bar = 0; bar < now.bars(); bar++) {
            if (now.parts(bar) == 0) {
                order[count++] = bar;
            }
            ruined[bar] = false;
        }
        int way = longestFirst ? 0 : chance.nextInt(4);
        for (int i = 1; i < count; i++) {
            int bar = order[i];
            int j = way >= 2 ? chance.nextInt(i + 1) : i;
            if (way >= 2) {
                order[i] = order[j];
                order[j] = bar;
            } else {
                for (; j > 0 && now.length(order[j - 1]) < now.length(bar); j--) {
                    order[j] = order[j - 1];
                }
                order[j] = bar;
            }
        }
        for (int i = 0; i < count; i++) {
            piece(order[i], chance);
        }
    }

    private void piece(int bar, SplittableRandom chance) {
        best.count = 0;
        double least = Double.MAX_VALUE;
        for (int kind : now.kinds(bar)) {
            least = explore(bar, kind, least, chance);
        }
        if (best.count > 0) {
            now.place(bar, best, bestKind, strips);
        }
    }

    private double explore(int bar, int kind, double leastSoFar, SplittableRandom chance) {
        double least = leastSoFar;
        long part = now.leastPart(bar);
        offers.gather(strips, now.used(), kind, Math.min(part, now.length(bar)));
        int fewest = offers.fewest(now.length(bar), loss);
        int limit = Math.min(now.mostParts(bar), offers.count());
        if (fewest > limit) {
            return least;
        }
        int extra = fewest < limit && chance.nextInt(16) == 0 ? 1 : 0;
        int tries = rules.concerns(bar) ? 8 : 4;
        int first = chance.nextInt(WAYS.length);
        for (int attempt = 0; attempt < tries; attempt++) {
            int parts = Math.min(limit, fewest + extra + attempt / 5);
            Selection.Way way = WAYS[(first + attempt) % WAYS.length];
            if (selection.pick(now.length(bar), parts, parts == 1 ? 0 : part, way, chance) && fill(bar)) {
                double score = score(kind) + 1e-3 * chance.nextDouble();
                if (score < least && rules.arrange(bar, trial, now)) {
                    least = score;
                    bestKind = kind;
                    best.copy(trial);
                }
            }
            if (parts == 1 && !rules.concerns(bar)) {
                break;
            }
        }
        return least;
    }

    /** Turns the picked offers into parts: all but the last whole, or a little less so that the last is long enough. */
    private boolean fill(int bar) {
        trial.count = 0;
        long rest = now.length(bar) + loss * (selection.count - 1);
        int last = selection.count - 1;
        for (int i = 0; i < last; i++) {
            rest -= offers.length(selection.chosen[i]);
        }
        long part = last == 0 ? 0 : now.leastPart(bar);
        long lacking = Math.max(0, part - rest);
        for (int i = 0; i <= last; i++) {
            int offer = selection.chosen[i];
            long whole = offers.length(offer);
            long cut = i == last ? Math.max(rest, part) : whole - Math.min(lacking, Math.max(0, whole - part));
            lacking -= i == last ? 0 : whole - cut;
            trial.add(offers.source(offer), cut, whole);
        }
        return lacking == 0 && trial.cut[last] <= trial.most[last];
    }

    /** How much a pick spoils, in joins. */
    private double score(int kind) {
        double spoilt = trial.count - 1;
        for (int i = 0; i < trial.count; i++) {
            double whole = trial.most[i] / unit;
            double rest = (trial.most[i] - trial.cut[i]) / unit;
            spoilt += SPREAD * (whole * whole - rest * rest);
            if (trial.source[i] < 0) {
                spoilt += strips.openingCost(kind, ~trial.source[i]);
            }
        }
        return spoilt;
    }

    @Override
    public double cost() {
        double spread = 0;
        for (int slot = 0, limit = strips.openLimit(); slot < limit; slot++) {
            if (strips.isOpen(slot)) {
                double whole = strips.length(slot) / unit;
                double rest = (strips.length(slot) - now.used()[slot]) / unit;
                spread += whole * whole - rest * rest;
            }
        }
        double missing = Math.max(MISSING, 1 + 2.0 * now.joins() / Math.max(1, now.bars() - now.missing()));
        return now.joins()
                + missing * now.missing()
                + missing * now.missingLength() / unit
                + SPREAD * spread
                + strips.cost(now.used());
    }

    /** How good the attempt is by the order of goods: less is better, a missing bar is worst, then joins. */
    public double merit() {
        return MISSING_FIRST * now.missing() + now.joins() + SECOND * strips.cost(now.used());
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
