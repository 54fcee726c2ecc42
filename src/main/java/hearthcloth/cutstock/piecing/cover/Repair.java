package hearthcloth.cutstock.piecing.cover;

import hearthcloth.cutstock.piecing.blocks.BlockCover;
import hearthcloth.cutstock.piecing.blocks.BlockSearch;
import hearthcloth.cutstock.piecing.blocks.Effort;
import hearthcloth.cutstock.piecing.blocks.Goal;
import hearthcloth.cutstock.piecing.blocks.Stock;
import hearthcloth.cutstock.piecing.blocks.Until;
import hearthcloth.cutstock.piecing.parameter.CoverParameters;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.piecing.tree.Trimming;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Makes part of a cover anew out of its own scraps and some that lie unused, so that less is lost. */
final class Repair {

    private final Heap heap;
    private final CoverParameters.Repair parameters;
    private final int[] scraps;
    private final BooleanSupplier spent;
    private final SplittableRandom chance;

    Repair(Heap heap, int[] scraps, BooleanSupplier spent, SplittableRandom chance) {
        this.heap = heap;
        this.parameters = heap.parameters().cover().repair();
        this.scraps = scraps;
        this.spent = spent;
        this.chance = chance;
    }

    /** Tries one part; the cover comes back no worse. */
    Covered once(Covered now, Effort effort) {
        Plank whole = Plank.of(now.tree());
        List<Plank> rows = new ArrayList<>();
        whole.rows(rows);
        if (rows.isEmpty()) {
            return now;
        }
        Plank row = rows.get(chance.nextInt(rows.size()));
        List<Plank> some = some(row);
        if (some.isEmpty()) {
            return now;
        }
        Pieced part = row.row(some);
        long lost = heap.lost(part);
        if (lost == 0 && chance.nextInt(parameters.lossless()) > 0) {
            return now;
        }
        Optional<Pieced> better = better(now, row, some, part, lost, effort);
        if (better.isEmpty()) {
            return now;
        }
        row.parts.removeAll(some);
        row.parts.add(Plank.of(better.get()));
        Pieced tree = whole.tree();
        return new Covered(tree, now.width(), now.height(), heap.lost(tree));
    }

    private List<Plank> some(Plank row) {
        List<Plank> parts = new ArrayList<>(row.parts);
        List<Plank> some = new ArrayList<>();
        int patches = 0;
        CoverParameters.Patches range = parameters.patches();
        int most = range.fewest() + chance.nextInt(range.most() - range.fewest() + 1);
        while (!parts.isEmpty()) {
            Plank next = parts.remove(chance.nextInt(parts.size()));
            if (patches + next.patches <= most) {
                some.add(next);
                patches += next.patches;
            }
        }
        return some;
    }

    private Optional<Pieced> better(Covered now, Plank row, List<Plank> some, Pieced part, long lost, Effort effort) {
        long sum = some.stream().mapToLong(p -> row.beside ? p.width : p.height).sum();
        int width = (int) (row.beside ? sum : row.width);
        int height = (int) (row.beside ? row.height : sum);
        BitSet own = new BitSet();
        Covered.collect(part, own);
        BitSet used = now.scraps();
        int[] others = Arrays.stream(scraps).filter(i -> !used.get(i)).toArray();
        shuffle(others);
        int[] pool = IntStream.concat(own.stream(), Arrays.stream(others))
                .limit(Math.min(Stock.MOST, Math.max(parameters.scraps(), own.cardinality())))
                .toArray();
        long spare = heap.area(own.stream().toArray()) + heap.area(others) - (long) width * height;
        BlockSearch search = new BlockSearch(
                heap.all().pick(pool),
                new Goal(width, height, spare, lost),
                effort.seeded(chance.nextLong()),
                heap.parameters().blocks());
        search.run(spent, Until.BEST);
        return search.best()
                .flatMap(cover -> trimmed(cover, pool, width, height))
                .filter(t -> heap.lost(t) <= lost);
    }

    private Optional<Pieced> trimmed(BlockCover cover, int[] pool, int width, int height) {
        Pieced tree = Heap.renumbered(cover.tree().get(), i -> pool[i]);
        return Trimming.to(tree, width, height, heap.all().limits());
    }

    private void shuffle(int[] list) {
        for (int i = list.length - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            int kept = list[i];
            list[i] = list[j];
            list[j] = kept;
        }
    }
}
