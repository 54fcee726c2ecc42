package hearthcloth.wrap.tie;

import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ShortClothException;
import hearthcloth.wrap.fold.TyingMoment;
import java.util.List;
import java.util.Optional;

/** Ties a cloth: the one place that knows which class folds which tie, done or on the way there. */
public final class TiedFold {

    private TiedFold() {}

    /**
     * Ties the cloth.
     *
     * @throws ShortClothException when it does not hold; says which size would do
     */
    public static Fold of(Fit fit) {
        if (!fit.holds()) {
            throw new ShortClothException(fit);
        }
        return switch (fit.tie()) {
            case FOUR_CORNER, ERRAND, FLAT -> BoxFold.of(fit);
            case TWO_KNOT -> fit.gift() instanceof Gift.Box ? BoxFold.of(fit) : RollFold.of(fit);
            case EDGE_ALONG_EDGE -> EdgeFold.of(fit);
            case ONE_BOTTLE -> BottleFold.of(fit);
            case ROUND -> TurnedFold.of(fit);
            case TWO_BOTTLES -> PairFold.of(fit);
            case BOOKS -> BooksFold.of(fit);
            case ROLL -> RollFold.of(fit);
        };
    }

    /**
     * The same tied with its spare corners outside, as they fall where no hand tucks them in; empty where the tie leaves
     * nothing to fall.
     */
    public static Optional<Fold> asItFalls(Fold tied) {
        return SpareCorners.outside(tied);
    }

    /**
     * The fold as far as it has come at a moment of tying.
     *
     * @throws IllegalArgumentException where this moment cannot be drawn
     */
    public static Fold at(TyingMoment moment, Fold tied) {
        Fit fit = tied.fit();
        if (!moment.isDrawn(fit.tie(), fit.gift())) {
            throw new IllegalArgumentException(moment + " of the " + fit.tie().words() + " is not drawn");
        }
        if (moment == TyingMoment.TIED) {
            return tied;
        }
        if (moment == TyingMoment.LAID) {
            return new Fold(
                    fit, tied.laying(), List.of(Halfway.flat(tied.laying().whole())), List.of());
        }
        return switch (fit.tie()) {
            case FOUR_CORNER, ERRAND, FLAT -> new BoxHalfway(tied, moment).fold();
            case TWO_KNOT ->
                fit.gift() instanceof Gift.Box ? new BoxHalfway(tied, moment).fold() : RollFold.at(moment, fit);
            case EDGE_ALONG_EDGE -> EdgeFold.at(moment, fit);
            case ONE_BOTTLE ->
                moment == TyingMoment.FIRST_PAIR ? new Halfway(tied, moment).fold() : BottleFold.at(moment, fit);
            case ROUND ->
                moment == TyingMoment.FIRST_PAIR ? new Halfway(tied, moment).fold() : TurnedFold.at(moment, fit);
            case TWO_BOTTLES ->
                moment == TyingMoment.WOUND ? new Halfway(tied, moment).fold() : PairFold.at(moment, fit);
            case BOOKS -> moment == TyingMoment.WOUND ? new Halfway(tied, moment).fold() : BooksFold.at(moment, fit);
            case ROLL -> moment == TyingMoment.WOUND ? new Halfway(tied, moment).fold() : RollFold.at(moment, fit);
        };
    }
}
