package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.cabin.Cabin;
import hearthcloth.cutstock.piecing.cabin.CabinJob;
import hearthcloth.cutstock.piecing.cabin.CabinSearch;
import hearthcloth.cutstock.piecing.tree.Joint;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Searches the log cabins of a cloth and sets them together in rows. */
final class BlockCloths {

    private final MarkedHeap heap;
    private final Blocks blocks;

    BlockCloths(MarkedHeap heap, Blocks blocks) {
        this.heap = heap;
        this.blocks = blocks;
    }

    /**
     * Blocks set together.
     *
     * @param blocks for each block the numbers of its patches, from 1 in the order of the tree's leaves
     * @param toned whether light and dark could be kept apart
     */
    record SetTogether(Pieced tree, List<Set<Integer>> blocks, boolean toned) {}

    /** Blocks that fill a net rectangle, light and dark apart where that is found, else as it comes. */
    Optional<SetTogether> search(long netWidth, long netHeight, BlockTurns turns, Budget budget, long seed) {
        for (boolean toned : new boolean[] {true, false}) {
            CabinJob job = job(netWidth, netHeight, turns, toned);
            Optional<List<Pieced>> found = CabinSearch.search(job, budget::spent, seed);
            if (found.isPresent()) {
                return Optional.of(set(found.get(), toned));
            }
        }
        return Optional.empty();
    }

    private CabinJob job(long netWidth, long netHeight, BlockTurns turns, boolean toned) {
        List<Cabin> cabins = new ArrayList<>();
        for (int row = 0; row < blocks.down(); row++) {
            for (int column = 0; column < blocks.across(); column++) {
                long width = share(netWidth, column, blocks.across());
                long height = share(netHeight, row, blocks.down());
                cabins.add(new Cabin(width, height, turns.bars(row, column, toned)));
            }
        }
        long seam = heap.allowances().seam();
        long least = heap.allowances().cutToShow(heap.terms(true).least()) - seam;
        return new CabinJob(
                cabins,
                heap.scraps(),
                tones(),
                new CabinJob.Rules(seam, least, heap.terms(true).keepShort()));
    }

    /** Length {@code i} of a length divided into whole marks as evenly as can be. */
    private static long share(long length, int i, int parts) {
        return length * (i + 1) / parts - length * i / parts;
    }

    /** Light is what is lighter than half of the heap, by area. */
    private List<Cabin.Tone> tones() {
        List<Piece> sorted = heap.pieces().stream()
                .sorted(Comparator.comparingDouble(BlockCloths::lightness))
                .toList();
        double half = sorted.stream().mapToDouble(Piece::areaMm2).reduce(0, Double::sum) / 2;
        double sum = 0;
        double middle = 0;
        for (Piece piece : sorted) {
            if (sum < half) {
                middle = lightness(piece);
            }
            sum += piece.areaMm2();
        }
        double limit = middle;
        boolean above = sorted.stream().anyMatch(piece -> lightness(piece) > limit);
        return heap.pieces().stream()
                .map(piece -> lightness(piece) > limit || (!above && lightness(piece) == limit)
                        ? Cabin.Tone.LIGHT
                        : Cabin.Tone.DARK)
                .toList();
    }

    private static double lightness(Piece piece) {
        return piece.fabric().colour().lab().lightness();
    }

    private SetTogether set(List<Pieced> found, boolean toned) {
        List<Pieced> rows = new ArrayList<>();
        List<Set<Integer>> numbers = new ArrayList<>();
        int patch = 0;
        for (int row = 0; row < blocks.down(); row++) {
            List<Pieced> inRow = found.subList(row * blocks.across(), (row + 1) * blocks.across());
            rows.add(inRow.stream().reduce((a, b) -> new Joint(true, a, b)).orElseThrow());
            for (Pieced block : inRow) {
                int size = block.patches().toList().size();
                numbers.add(new LinkedHashSet<>(
                        IntStream.rangeClosed(patch + 1, patch + size).boxed().toList()));
                patch += size;
            }
        }
        return new SetTogether(
                rows.stream().reduce((a, b) -> new Joint(false, a, b)).orElseThrow(), numbers, toned);
    }
}
