package hearthcloth.plan.propose;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.parameter.ProposalParameters;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Answers the inverse question: how large a cloth can be made? Sides are tried by bisection, and then a few steps
 * beyond, since sometimes a larger cloth can be made where a smaller one cannot. The answer is the largest cloth found;
 * whether a larger one is possible only {@link #limit} says.
 */
final class LargestCloth {

    /** Steps tried beyond the side that bisection found. */
    private static final int BEYOND = ProposalParameters.standard().shortage().beyond();

    private LargestCloth() {}

    /**
     * A side that no square cloth reaches, whatever its layout: with its hem it would be larger than all fabric that is
     * wide enough for a patch.
     *
     * @param least the narrowest a patch is cut
     */
    public static Length limit(Stash stash, Length hem, Length least) {
        double area = stash.pieces().stream()
                .filter(piece ->
                        !piece.size().width().min(piece.size().height()).isLessThan(least))
                .mapToDouble(Piece::areaMm2)
                .reduce(0, Double::sum);
        long side = Rounding.UP.whole(Math.sqrt(area) * Length.mm(1).nm());
        return new Length(side).minus(hem.times(2));
    }

    /**
     * The largest multiple of {@code step}, in the proportions of {@code shape}, that {@code makes} accepts.
     *
     * @param area an area that no cloth can reach, in square millimetres
     */
    static Optional<Size> of(Size shape, Length step, double area, Predicate<Size> makes) {
        double whole = shape.areaMm2();
        long most = (long) (Math.sqrt(area / whole) * shape.width().nm() / step.nm());
        long low = 0;
        long high = most;
        while (low < high) {
            long middle = (low + high + 1) / 2;
            if (makes.test(scaled(shape, step.times(middle), step))) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        for (long beyond = low + 2; low > 0 && beyond <= Math.min(low + BEYOND, most); beyond++) {
            if (makes.test(scaled(shape, step.times(beyond), step))) {
                low = beyond;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(scaled(shape, step.times(low), step));
    }

    /** {@code shape} scaled to {@code width}, with its height rounded to a whole step. */
    static Size scaled(Size shape, Length width, Length step) {
        if (shape.isSquare()) {
            return Size.square(width);
        }
        double ratio = (double) shape.height().nm() / shape.width().nm();
        Length height = step.times(Math.max(1, Math.round(width.nm() * ratio / step.nm())));
        return new Size(width, height);
    }

    /** Whether a larger square is ruled out, and if not, from which side on it is. */
    static Sentence howSure(Stash stash, Wish wish, Length side) {
        Length step = Planner.step(wish.preferences().ruler());
        Length hem = wish.making().hem().allowance();
        Length least = hem.min(wish.making().seam().narrow()).times(2);
        Length limit = limit(stash, hem, least);
        return side.plus(step).isMoreThan(limit)
                ? PlanningSentences.chosenSizeSure(Argument.of(step, Rounding.NEAREST))
                : PlanningSentences.chosenSizeFound(Argument.of(limit, Rounding.UP));
    }
}
