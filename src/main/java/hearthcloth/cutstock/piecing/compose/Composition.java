package hearthcloth.cutstock.piecing.compose;

import hearthcloth.cutstock.piecing.parameter.CompositionParameters;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.ScrapPatch;
import hearthcloth.number.Elementary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;

/**
 * Arranges a cloth anew without changing its size, its patches' sizes or what is lost: the parts of a row change places,
 * and patches cut to the same size are exchanged. First no two seams are to end within the clearance of each other across
 * a third, then no fabric is to lie beside itself. Annealing (Kirkpatrick, Gelatt, Vecchi, "Optimization by simulated
 * annealing", Science 220 (1983), from memory).
 */
public final class Composition {

    private final CompositionParameters parameters = CompositionParameters.standard();
    private final Row root;
    private final List<Row> rows = new ArrayList<>();
    private final List<Row> patches = new ArrayList<>();
    private final long seam;
    private final long apart;
    private final IntUnaryOperator fabric;
    private final IntPredicate turnable;
    private final SplittableRandom chance;

    /**
     * Prepares a cloth.
     *
     * @param tree at cut sizes
     * @param spacing what seams need
     * @param fabric the fabric of each scrap
     * @param turnable whether a scrap may be turned
     */
    public Composition(Pieced tree, Spacing spacing, IntUnaryOperator fabric, IntPredicate turnable, long seed) {
        this.seam = spacing.seam();
        this.apart = spacing.clearance() == 0 ? 0 : spacing.clearance() + spacing.shift();
        this.root = Row.of(tree, seam);
        this.fabric = fabric;
        this.turnable = turnable;
        this.chance = new SplittableRandom(seed);
        root.collect(rows, patches);
    }

    /**
     * What seams need.
     *
     * @param seam what a seam takes of both sides together
     * @param clearance how far apart seams are to end on the two sides of a third
     * @param shift how far a seam may come to lie off its net place against another: nothing where all seams wrap the same
     *     way, else what the wide allowance is more than the narrow one
     */
    public record Spacing(long seam, long clearance, long shift) {}

    /** Arranges until the budget is spent or nothing is left to be bettered. */
    public Composed compose(BooleanSupplier spent) {
        root.place(0, 0);
        double now = cost();
        double best = now;
        Pieced tree = root.tree();
        double cooling = Elementary.pow(parameters.coolest() / parameters.warmest(), 1.0 / parameters.round());
        double warmth = parameters.warmest();
        while (best > 0 && !rows.isEmpty() && !spent.getAsBoolean()) {
            Runnable back = change();
            root.place(0, 0);
            double next = cost();
            if (next <= now - warmth * Elementary.log(1 - chance.nextDouble())) {
                now = next;
                if (now < best) {
                    best = now;
                    tree = root.tree();
                }
            } else {
                back.run();
            }
            warmth = warmth < parameters.coolest() ? parameters.warmest() : warmth * cooling;
        }
        Row last = Row.of(tree, seam);
        return judged(last);
    }

    private Composed judged(Row last) {
        last.place(0, 0);
        List<Row> lastRows = new ArrayList<>();
        List<Row> lastPatches = new ArrayList<>();
        last.collect(lastRows, lastPatches);
        List<Crossing> crossings = new ArrayList<>();
        lastRows.forEach(row -> crossings(row, crossings));
        return new Composed(last.tree(), crossings, alike(lastPatches));
    }

    /** Changes something and tells how to change it back. */
    private Runnable change() {
        if (chance.nextInt(parameters.exchange()) == 0) {
            Row one = patches.get(chance.nextInt(patches.size()));
            Row other = patches.get(chance.nextInt(patches.size()));
            if (exchange(one, other)) {
                return () -> exchange(one, other);
            }
        }
        List<Row> parts = rows.get(chance.nextInt(rows.size())).parts;
        int i = chance.nextInt(parts.size());
        int j = (i + 1 + chance.nextInt(parts.size() - 1)) % parts.size();
        Collections.swap(parts, i, j);
        return () -> Collections.swap(parts, i, j);
    }

    /** Exchanges two patches that are cut to the same size. */
    private boolean exchange(Row one, Row other) {
        ScrapPatch a = one.patch();
        ScrapPatch b = other.patch();
        if (a.width() == b.width() && a.height() == b.height()) {
            one.lay(b);
            other.lay(a);
            return true;
        }
        if (a.width() != b.height()
                || a.height() != b.width()
                || !turnable.test(a.scrap())
                || !turnable.test(b.scrap())) {
            return false;
        }
        one.lay(b.quarterTurned());
        other.lay(a.quarterTurned());
        return true;
    }

    private double cost() {
        List<Crossing> crossings = new ArrayList<>();
        rows.forEach(row -> crossings(row, crossings));
        return parameters.crossing() * crossings.size() + alike(patches);
    }

    private void crossings(Row row, List<Crossing> into) {
        for (int i = 1; i < row.parts.size(); i++) {
            List<Long> before = new ArrayList<>();
            List<Long> after = new ArrayList<>();
            row.parts.get(i - 1).ends(!row.beside, false, before);
            row.parts.get(i).ends(!row.beside, true, after);
            long at = row.beside ? row.parts.get(i).left : row.parts.get(i).top;
            for (long a : before) {
                for (long b : after) {
                    if (Math.abs(a - b) < apart) {
                        into.add(row.beside ? new Crossing(at, a) : new Crossing(a, at));
                    }
                }
            }
        }
    }

    private int alike(List<Row> list) {
        int pairs = 0;
        for (int i = 0; i < list.size(); i++) {
            Row a = list.get(i);
            int own = fabric.applyAsInt(a.patch().scrap());
            for (int j = 0; j < i; j++) {
                Row b = list.get(j);
                if (fabric.applyAsInt(b.patch().scrap()) == own && touch(a, b)) {
                    pairs++;
                }
            }
        }
        return pairs;
    }

    /** Whether two patches share more than a corner. */
    private static boolean touch(Row a, Row b) {
        long across = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
        long down = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
        return (across > 0 && down == 0) || (down > 0 && across == 0);
    }
}
