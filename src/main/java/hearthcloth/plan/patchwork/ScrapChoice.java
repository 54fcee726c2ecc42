package hearthcloth.plan.patchwork;

import hearthcloth.number.Elementary;
import hearthcloth.plan.parameter.PatchworkParameters;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Which scraps of a heap a cloth may be made of, so that arrangements differ to the eye. */
enum ScrapChoice {
    /** All, cut where it helps. */
    ANY(true),
    /** All, but none is cut in two. */
    WHOLE(false),
    /** The small ones first: many patches. */
    SMALL(true),
    /** The large ones first: few seams. */
    LARGE(true),
    /** Two or three patches out of each large one: sizes more alike. */
    EVEN(true),
    /** Those whose colours lie nearest together. */
    CALM(true),
    /** The darkest and the lightest. */
    LIVELY(true),
    /** Those nearest in size to the one in the middle. */
    ALIKE(true);

    private static final PatchworkParameters.Choice CHOICE =
            PatchworkParameters.standard().choice();

    private final boolean offcuts;

    ScrapChoice(boolean offcuts) {
        this.offcuts = offcuts;
    }

    Sentence title() {
        return PlanningSentences.scrapsTitle(name());
    }

    /** Whether a scrap may be cut in two where its offcut goes back. */
    boolean offcuts() {
        return offcuts;
    }

    /** Whether it leaves out some of the heap, so that another choice may make what this one does not. */
    boolean leavesOut() {
        return this != ANY && this != WHOLE;
    }

    /** The heap to choose from: itself, or with pieces parted that are large among the others or for the cloth. */
    MarkedHeap heap(MarkedHeap whole, double net) {
        return this == EVEN ? whole.parted(Math.min(whole.middleArea(), net / CHOICE.fewest())) : whole;
    }

    /**
     * The scraps of the heap to choose among.
     *
     * @param net the net area of the cloth in square marks
     */
    List<Integer> of(MarkedHeap heap, double net) {
        List<Integer> all =
                new ArrayList<>(IntStream.range(0, heap.pieces().size()).boxed().toList());
        if (this == ANY || this == WHOLE || this == EVEN) {
            return all;
        }
        all.sort(order(heap));
        List<Integer> chosen = new ArrayList<>();
        double sum = 0;
        for (int scrap : all) {
            if (sum < CHOICE.toChoose() * net) {
                chosen.add(scrap);
                sum += heap.netArea(scrap);
            }
        }
        all.stream()
                .filter(scrap -> heap.scraps().get(scrap).handling().must() && !chosen.contains(scrap))
                .forEach(chosen::add);
        return chosen.stream().sorted().toList();
    }

    private Comparator<Integer> order(MarkedHeap heap) {
        Comparator<Integer> bySize =
                Comparator.comparingDouble(scrap -> heap.pieces().get(scrap).areaMm2());
        return switch (this) {
            case SMALL -> bySize;
            case LARGE -> bySize.reversed();
            case ALIKE -> {
                double middle = heap.middleArea();
                yield Comparator.comparingDouble(
                        scrap -> Math.abs(Elementary.log(heap.netArea(scrap) / Math.max(1, middle))));
            }
            case CALM -> {
                Fabric most = most(heap);
                yield Comparator.comparingDouble(scrap -> fabric(heap, scrap)
                        .colour()
                        .lab()
                        .difference(most.colour().lab()));
            }
            case LIVELY -> {
                double middle = middle(heap);
                yield Comparator.comparingDouble((Integer scrap) ->
                                Math.abs(fabric(heap, scrap).colour().lab().lightness() - middle))
                        .reversed();
            }
            default -> bySize;
        };
    }

    private static Fabric fabric(MarkedHeap heap, int scrap) {
        return heap.pieces().get(scrap).fabric();
    }

    /** The fabric of which there is most. */
    private static Fabric most(MarkedHeap heap) {
        List<Piece> pieces = heap.pieces();
        return pieces.stream()
                .map(Piece::fabric)
                .max(Comparator.comparingDouble(fabric -> pieces.stream()
                        .filter(piece -> piece.fabric().equals(fabric))
                        .mapToDouble(Piece::areaMm2)
                        .reduce(0, Double::sum)))
                .orElseThrow();
    }

    private static double middle(MarkedHeap heap) {
        double sum = heap.pieces().stream()
                .mapToDouble(piece -> piece.fabric().colour().lab().lightness())
                .reduce(0, Double::sum);
        return sum / Math.max(1, heap.pieces().size());
    }
}
