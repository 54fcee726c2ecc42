package hearthcloth.plan.propose;

import hearthcloth.cutstock.cutjoin.CutAndJoin;
import hearthcloth.cutstock.job.CutOutcome;
import hearthcloth.cutstock.job.Shortage;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.fit.CutJob;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Argument.Joined;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds what would help a draft that was not made. Fabric is added until the search succeeds, so that what is said to
 * be enough was tried.
 */
public final class Remedy {

    private static final ProposalParameters.Shortage SHORTAGE =
            ProposalParameters.standard().shortage();

    private Remedy() {}

    /** What is short in a draft, and fabric that is enough, in sentences. */
    public static List<Sentence> of(Draft draft, Supply supply, long steps, Budget budget) {
        CutJob job = Fitting.job(draft.design(), supply);
        List<Sentence> sentences = new ArrayList<>();
        List<Piece> added = new ArrayList<>();
        for (int turn = 0; turn < SHORTAGE.turns(); turn++) {
            Budget share = Budget.either(Budget.steps(steps), budget);
            CutOutcome outcome = new CutAndJoin(job.job()).search(share, 1, found -> {});
            Optional<List<Shortage>> shortages = shortages(outcome);
            if (shortages.isEmpty()) {
                sentences.add(enough(added));
                return sentences;
            }
            if (turn == 0) {
                boolean proven = outcome instanceof CutOutcome.Impossible;
                sentences.addAll(job.sentences(shortages.get(), proven).stream()
                        .limit(SHORTAGE.said())
                        .toList());
            }
            added.addAll(job.pieces(shortages.get()));
            List<Piece> more = new ArrayList<>(supply.of(draft.design().fabrics()));
            more.addAll(added);
            job = new CutJob(draft.design(), more);
        }
        return sentences;
    }

    private static Optional<List<Shortage>> shortages(CutOutcome outcome) {
        if (outcome instanceof CutOutcome.Impossible impossible) {
            return Optional.of(impossible.shortages());
        }
        return outcome instanceof CutOutcome.NotFound notFound ? Optional.of(notFound.leftOut()) : Optional.empty();
    }

    private static Sentence enough(List<Piece> added) {
        if (added.isEmpty()) {
            return PlanningSentences.moreTime();
        }
        Map<Sentence, Integer> pieces = new LinkedHashMap<>();
        for (Piece piece : added) {
            pieces.merge(PlanningSentences.morePiece(named(piece), size(piece)), 1, Integer::sum);
        }
        List<Sentence> counted = new ArrayList<>();
        pieces.forEach((piece, count) -> counted.add(
                count == 1
                        ? piece
                        : PlanningSentences.morePieces(
                                piece.with().get(0),
                                Argument.number(count),
                                piece.with().get(1))));
        return PlanningSentences.moreAdded(Argument.row(Joined.SEMICOLONS, counted));
    }

    private static Argument named(Piece piece) {
        return Argument.text(piece.fabric().name());
    }

    private static Argument size(Piece piece) {
        return Argument.of(piece.size(), Rounding.UP);
    }
}
