package hearthcloth.plan.ready;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** The layouts of {@link ReadyWidths} with the sentences that say what was chosen. */
public final class ReadyLayouts {

    /** Widths tried at most. */
    private static final int WIDTHS = 8;

    private final Wish wish;
    private final Ruler ruler;
    private final ReadyStrips strips;
    private final ReadyWidths ready;
    private final List<Size> largest;

    public ReadyLayouts(Wish wish, List<Piece> pieces, Length leastBar) {
        this.wish = wish;
        this.ruler = wish.preferences().ruler();
        Length least = wish.making()
                .seam()
                .loss()
                .plus(wish.making().hem().allowance())
                .plus(leastBar);
        Length most = ruler.isMetric() ? Length.cm(20) : Length.inches(8);
        this.strips =
                new ReadyStrips(pieces, ruler, least, most, wish.making().seam().loss());
        this.largest = largest(pieces);
        this.ready = new ReadyWidths(strips, wish.making(), this::holds, leastBar);
    }

    /**
     * The widths that narrow pieces have, the one with most length first; nothing is lost to ripping at these widths.
     */
    public List<Length> widths() {
        return strips.widths().subList(0, Math.min(WIDTHS, strips.widths().size()));
    }

    /** The layouts of a size in an order, for each of these numbers of rounds. */
    public List<LayoutCandidate> of(Size size, Order order, List<Integer> rounds) {
        return ready.of(size, order, rounds).stream()
                .map(found -> new LayoutCandidate(
                        order, found.rounds(), found.layout(), chosen(order, found), OptionalDouble.of(found.ease())))
                .toList();
    }

    private List<Sentence> chosen(Order order, ReadyWidths.Found found) {
        List<Sentence> chosen = new ArrayList<>();
        if (wish.shape().order().isEmpty()) {
            chosen.add(PlanningSentences.chosenOrder(PlanningSentences.order(order.name())));
        }
        chosen.add(widths(found));
        if (wish.shape().rounds().isEmpty()) {
            chosen.add(PlanningSentences.chosenRounds(found.rounds()));
        }
        Size hearth = Layout.hearthEdges(found.layout().courses(), wish.making())
                .around(found.layout().hearth());
        chosen.add(PlanningSentences.chosenHearth(Argument.of(hearth, Rounding.UP)));
        return chosen;
    }

    /** The widths from the hearth outwards, round by round; all of them where the bars of a round differ. */
    private static Sentence widths(ReadyWidths.Found found) {
        int bars = found.cut().size() / found.rounds();
        List<Argument> rounds = new ArrayList<>();
        for (int round = 0; round < found.rounds(); round++) {
            List<Length> widths = found.cut().subList(round * bars, (round + 1) * bars);
            rounds.add(new Argument.Widths(widths.stream().distinct().toList(), Rounding.NEAREST));
        }
        if (rounds.stream().distinct().count() == 1) {
            return PlanningSentences.chosenReadyBars(rounds.get(0));
        }
        List<Sentence> numbered = new ArrayList<>();
        for (int round = 0; round < rounds.size(); round++) {
            numbered.add(PlanningSentences.chosenRound(Argument.number(round + 1), rounds.get(round)));
        }
        return PlanningSentences.chosenReadyRounds(Argument.row(Joined.SEMICOLONS, numbered));
    }

    private boolean holds(Size size) {
        return largest.stream().anyMatch(one -> one.holds(size));
    }

    /**
     * The sizes of pieces that no other piece exceeds in both directions; a piece without nap counts turned as well.
     */
    private static List<Size> largest(List<Piece> pieces) {
        List<Size> all = new ArrayList<>();
        for (Piece piece : pieces) {
            all.add(piece.size());
            if (piece.fabric().nap() == Fabric.Nap.ANY) {
                all.add(piece.size().turned());
            }
        }
        all.sort(Comparator.comparing(Size::width).thenComparing(Size::height).reversed());
        List<Size> largest = new ArrayList<>();
        Length highest = Length.ZERO;
        for (Size size : all) {
            if (size.height().isMoreThan(highest)) {
                largest.add(size);
                highest = size.height();
            }
        }
        return List.copyOf(largest);
    }
}
