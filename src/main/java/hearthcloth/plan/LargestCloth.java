package hearthcloth.plan;

import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The inverse question: how large a cloth can be made? Sides are tried by bisection; that a smaller cloth can be made
 * where a larger one can is nearly always so, and where it is not the answer is still a cloth that can be made.
 */
final class LargestCloth {

    private LargestCloth() {}

    /**
     * The largest multiple of {@code step}, in the proportions of {@code shape}, that {@code makes} accepts.
     *
     * @param most an area no cloth can reach, square millimetres
     */
    static Optional<Size> of(Size shape, Length step, double most, Predicate<Size> makes) {
        double whole = shape.areaMm2();
        double side = Math.sqrt(most / whole);
        long low = 0;
        long high = (long) (side * shape.width().nm() / step.nm());
        while (low < high) {
            long middle = (low + high + 1) / 2;
            if (makes.test(scaled(shape, step.times(middle), step))) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(scaled(shape, step.times(low), step));
    }

    /** {@code shape} brought to {@code width}, its height to a whole step. */
    static Size scaled(Size shape, Length width, Length step) {
        if (shape.isSquare()) {
            return Size.square(width);
        }
        double ratio = (double) shape.height().nm() / shape.width().nm();
        Length height = step.times(Math.max(1, Math.round(width.nm() * ratio / step.nm())));
        return new Size(width, height);
    }
}
