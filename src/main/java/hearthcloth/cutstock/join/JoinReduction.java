package hearthcloth.cutstock.join;

import hearthcloth.cutstock.search.SearchParameters;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Saves a join by dividing strips and bars into one more set ({@link JoinSets}), over all bars that are pieced from one
 * kind of strip and share none with others; or pieces bars that could not be pieced, by dividing anew what the others
 * leave. Strips that could still be opened take part.
 */
final class JoinReduction {

    private final Piecework now;
    private final StripSource strips;
    private final JoinRules rules;
    private final StripCandidates offers;
    private final long loss;
    private final SearchParameters.Reduction parameters;
    private final BarParts trial;

    private final int[] root;
    private int hole;
    private int[] bars = new int[0];
    private int[] sources = new int[0];
    private long[] barLength = new long[0];
    private long[] stripLength = new long[0];

    JoinReduction(
            Piecework now,
            StripSource strips,
            JoinRules rules,
            StripCandidates offers,
            long loss,
            SearchParameters.Reduction parameters) {
        this.now = now;
        this.strips = strips;
        this.rules = rules;
        this.offers = offers;
        this.loss = loss;
        this.parameters = parameters;
        this.trial = new BarParts(now.capacity);
        this.root = new int[now.bars() + strips.slots() + 1];
    }

    /**
     * Tries to piece one or all of the bars that are not pieced yet, or to save a join among those that are, which
     * leaves more for the others.
     *
     * @return whether that was done; what was planned but could not be carried out leaves bars unpieced
     */
    boolean win(SplittableRandom chance) {
        int missing = now.missing();
        int joins = now.joins();
        boolean helps = missing > 0 && (missing == now.bars() || chance.nextInt(3) > 0);
        int wished = helps ? now.someMissing(chance) : chance.nextInt(now.bars());
        int[] kinds = now.kinds(wished);
        int kind = kinds[chance.nextInt(kinds.length)];
        connect(kind, helps ? wished : -1, helps && chance.nextBoolean());
        collect(kind);
        if (!promising(helps)) {
            return false;
        }
        StripChain chain = chain();
        JoinSets sets = sets(chain);
        boolean won =
                helps ? sets.help(hole, parameters.divisions(), chance) : sets.win(parameters.divisions(), chance);
        if (won) {
            carryOut(sets, chain, kind, chance);
        }
        return won && (now.missing() < missing || (now.missing() == missing && now.joins() < joins));
    }

    private boolean promising(boolean helps) {
        if (bars.length == 0) {
            return false;
        }
        JoinBounds bounds = new JoinBounds(barLength, stripLength, loss);
        return helps
                ? bounds.missing() == 0
                : bounds.joins()
                        < Arrays.stream(bars).map(bar -> now.parts(bar) - 1).sum();
    }

    private StripChain chain() {
        return new StripChain(
                stripLength,
                barLength,
                Arrays.stream(bars).mapToLong(now::leastPart).toArray(),
                Arrays.stream(bars).map(now::mostParts).toArray(),
                loss);
    }

    /**
     * Links every bar with its strips, and everything that this kind cannot serve with one root that stays as it is;
     * with that root also the bars that are not pieced, except the one wished for (-1: none) or all.
     */
    private void connect(int kind, int wished, boolean allMissing) {
        int n = now.bars();
        Arrays.setAll(root, i -> i);
        for (int bar = 0; bar < n; bar++) {
            boolean passedOver = now.parts(bar) == 0 && bar != wished && !allMissing;
            if (passedOver || !asks(bar, kind)) {
                root[find(bar)] = find(n + strips.slots());
            }
            for (int i = 0; i < now.parts(bar); i++) {
                root[find(bar)] = find(n + now.strip(bar, i));
            }
        }
    }

    private boolean asks(int bar, int kind) {
        boolean asks = true;
        for (int i = 0; i < now.parts(bar); i++) {
            asks &= strips.serves(now.strip(bar, i), kind);
        }
        return asks && Arrays.stream(now.kinds(bar)).anyMatch(mine -> mine == kind);
    }

    private void collect(int kind) {
        int n = now.bars();
        int fixed = find(n + strips.slots());
        bars = IntStream.range(0, n).filter(bar -> find(bar) != fixed).toArray();
        barLength = Arrays.stream(bars).mapToLong(now::length).toArray();
        offers.gather(
                strips,
                now.used(),
                kind,
                Arrays.stream(bars).mapToLong(now::leastPart).min().orElse(0));
        IntStream held = IntStream.range(0, strips.openLimit())
                .filter(slot -> strips.isOpen(slot) && now.used()[slot] > 0 && find(n + slot) != fixed);
        IntStream fresh = IntStream.range(0, offers.count())
                .map(i -> offers.source(offers.count() - 1 - i))
                .filter(source -> source < 0 && !strips.isTail(~source))
                .limit(parameters.fresh());
        sources = IntStream.concat(held, fresh).toArray();
        stripLength = Arrays.stream(sources)
                .mapToLong(source -> source < 0 ? strips.offered(kind, ~source, now.used()) : strips.length(source))
                .toArray();
    }

    private JoinSets sets(StripChain chain) {
        int[] number = new int[root.length];
        Arrays.fill(number, -1);
        int[] set = new int[sources.length + bars.length];
        hole = -1;
        int count = 0;
        for (int i = 0; i < set.length; i++) {
            int top = top(i);
            if (top < 0 || number[top] < 0) {
                set[i] = count++;
                if (top >= 0) {
                    number[top] = set[i];
                }
            } else {
                set[i] = number[top];
            }
            hole = top == now.bars() + strips.slots() ? set[i] : hole;
        }
        return new JoinSets(stripLength, barLength, loss, set, count, chain);
    }

    /**
     * A number that identifies the set of a strip or a bar: one for all bars that are not pieced, -1 for a strip that
     * is not open.
     */
    private int top(int i) {
        if (i < sources.length) {
            return sources[i] < 0 ? -1 : find(now.bars() + sources[i]);
        }
        int bar = bars[i - sources.length];
        return now.parts(bar) == 0 ? now.bars() + strips.slots() : find(bar);
    }

    /**
     * Pieces the bars of all changed sets anew. Meanwhile their strips are held open by counting one unit of each as
     * used.
     */
    private void carryOut(JoinSets sets, StripChain chain, int kind, SplittableRandom chance) {
        now.hold(1);
        for (int source : sources) {
            now.used()[Math.max(0, source)] += source < 0 ? 0 : 1;
        }
        for (int i = 0; i < bars.length; i++) {
            if (sets.changed(sets.ofBar(i)) && now.parts(bars[i]) > 0) {
                now.remove(bars[i], strips);
            }
        }
        for (int set = 0; set < sets.count(); set++) {
            if (sets.changed(set) && sets.works(set, chance)) {
                lay(chain, kind);
            }
        }
        for (int source : sources) {
            if (source >= 0 && --now.used()[source] == 0) {
                strips.close(source);
            }
        }
        now.hold(0);
    }

    private void lay(StripChain chain, int kind) {
        if (!open(chain, kind)) {
            return;
        }
        for (int i = 0; i < chain.bars(); i++) {
            trial.count = 0;
            for (int part = chain.firstPart(i); part < chain.firstPart(i + 1); part++) {
                trial.add(sources[chain.source(part)], chain.cut(part), chain.most(part));
            }
            int bar = bars[chain.bar(i)];
            if (rules.arrange(bar, trial, now)) {
                now.place(bar, trial, kind, strips);
            }
        }
    }

    /** Opens and holds the strips that a set needs and that are not open yet; false if one is no longer there. */
    private boolean open(StripChain chain, int kind) {
        for (int part = 0; part < chain.firstPart(chain.bars()); part++) {
            int strip = chain.source(part);
            if (sources[strip] < 0) {
                int slot = strips.open(kind, ~sources[strip], now.used());
                if (slot < 0) {
                    return false;
                }
                sources[strip] = slot;
                now.used()[slot]++;
                if (strips.length(slot) < stripLength[strip]) {
                    return false;
                }
            }
        }
        return true;
    }

    private int find(int of) {
        int i = of;
        while (root[i] != i) {
            root[i] = root[root[i]];
            i = root[i];
        }
        return i;
    }
}
