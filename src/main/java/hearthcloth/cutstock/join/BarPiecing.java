package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.SearchParameters;
import java.util.SplittableRandom;

/**
 * Pieces one bar at a time: from the fewest strips or remainders possible, or one more, chosen in several ways in turn;
 * of these choices the one that spoils least is taken. A remainder counts by the square of its length. Some bars, by
 * chance, are pieced part by part instead.
 */
final class BarPiecing {

    private static final CandidateSelection.Way[] WAYS = CandidateSelection.Way.values();

    private final Piecework now;
    private final StripSource strips;
    private final JoinRules rules;
    private final StripCandidates offers;
    private final long loss;
    private final double unit;
    private final SearchParameters.Piecing parameters;
    private final CandidateSelection selection;
    private final BarParts trial;
    private final BarParts best;
    private int bestKind;

    /** Prepares piecing; {@code unit} is the mean length of a bar. */
    BarPiecing(
            Piecework now,
            StripSource strips,
            JoinRules rules,
            StripCandidates offers,
            long loss,
            double unit,
            SearchParameters.Piecing parameters) {
        this.now = now;
        this.strips = strips;
        this.rules = rules;
        this.offers = offers;
        this.loss = loss;
        this.unit = unit;
        this.parameters = parameters;
        this.selection = new CandidateSelection(offers, loss, now.capacity);
        this.trial = new BarParts(now.capacity);
        this.best = new BarParts(now.capacity);
    }

    /**
     * Pieces a bar if that is possible; tries again where strips that were chosen together exclude each other.
     *
     * @param plainly from the fewest strips only, as in the first construction, so that strips of exactly the right
     *     length are found at once where the stash has them
     */
    void piece(int bar, boolean plainly, SplittableRandom chance) {
        if (!plainly && !rules.concerns(bar) && now.mostParts(bar) > 1 && chance.nextInt(parameters.stepwise()) == 0) {
            stepwise(bar, chance);
        }
        for (int attempt = 0; attempt < parameters.attempts() && !now.pieced(bar); attempt++) {
            best.count = 0;
            double least = Double.MAX_VALUE;
            for (int kind : now.kinds(bar)) {
                least = explore(bar, kind, plainly, least, chance);
            }
            if (best.count == 0) {
                return;
            }
            now.place(bar, best, bestKind, strips);
        }
    }

    /**
     * Pieces a bar part by part, each from what there is once the one before is cut, so that its parts may lie both
     * ways on one plot. A bar that cannot be finished in this way is taken apart again.
     */
    private void stepwise(int bar, SplittableRandom chance) {
        int[] kinds = now.kinds(bar);
        int kind = kinds[chance.nextInt(kinds.length)];
        boolean going = true;
        while (going) {
            gather(bar, kind);
            int fits = offers.atLeast(now.lacking(bar));
            boolean last = fits < offers.count() && (now.parts(bar) > 0 || chance.nextBoolean());
            int pick = last ? fits : longish(chance);
            going = pick >= 0
                    && offers.length(pick) > loss
                    && now.lengthen(bar, offers.source(pick), offers.length(pick), kind, loss, strips);
        }
        if (!now.pieced(bar) && now.parts(bar) > 0) {
            now.remove(bar, strips);
        }
    }

    /** A random offer, long ones being likelier; -1 if there is none. */
    private int longish(SplittableRandom chance) {
        int count = offers.count();
        return count == 0 ? -1 : Math.max(chance.nextInt(count), chance.nextInt(count));
    }

    private double explore(int bar, int kind, boolean plainly, double leastSoFar, SplittableRandom chance) {
        double least = leastSoFar;
        long part = now.leastPart(bar);
        gather(bar, kind);
        int fewest = offers.fewest(now.length(bar), loss);
        int limit = Math.min(now.mostParts(bar), offers.count());
        if (fewest > limit) {
            return least;
        }
        int extra = !plainly && fewest < limit && chance.nextBoolean() ? 1 : 0;
        int tries = rules.concerns(bar) ? 8 : 4;
        int first = chance.nextInt(WAYS.length);
        for (int attempt = 0; attempt < tries; attempt++) {
            int parts = Math.min(limit, fewest + extra + attempt / 5);
            CandidateSelection.Way way = WAYS[(first + attempt) % WAYS.length];
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

    /**
     * Turns the chosen offers into parts: all but the last are used whole, or a little less so that the last is long
     * enough.
     */
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

    /** How much a choice spoils, in joins. */
    private double score(int kind) {
        double spoilt = trial.count - 1;
        for (int i = 0; i < trial.count; i++) {
            double whole = trial.most[i] / unit;
            double rest = (trial.most[i] - trial.cut[i]) / unit;
            spoilt += parameters.spread() * (whole * whole - rest * rest);
            if (trial.source[i] < 0) {
                spoilt += strips.openingCost(kind, ~trial.source[i], now.used());
            }
        }
        return spoilt;
    }

    /** Begins a bar that could not be pieced, from the longest remainders, of the kind that has the longest. */
    void begin(int bar) {
        int kind = -1;
        long longest = 0;
        for (int other : now.kinds(bar)) {
            gather(bar, other);
            if (offers.longest() > longest) {
                longest = offers.longest();
                kind = other;
            }
        }
        boolean going = longest > loss;
        while (going) {
            gather(bar, kind);
            int last = offers.count() - 1;
            going = offers.longest() > loss
                    && !(rules.concerns(bar) && offers.longest() >= now.lacking(bar))
                    && now.lengthen(bar, offers.source(last), offers.length(last), kind, loss, strips);
        }
    }

    private void gather(int bar, int kind) {
        offers.gather(strips, now.used(), kind, Math.min(now.leastPart(bar), now.length(bar)));
    }
}
