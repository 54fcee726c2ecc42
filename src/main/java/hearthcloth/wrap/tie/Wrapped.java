package hearthcloth.wrap.tie;

import hearthcloth.cloth.Cloth;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Fold;
import java.util.Optional;

/**
 * What a planned cloth is to be tied round, and how.
 *
 * @param tail what each knotted end needs, with the range it may honestly lie in
 */
public record Wrapped(Gift gift, Tie tie, Tail tail, Placing placing) {

    /** The gift in the middle, the cloth's front outside. */
    public static Wrapped of(Gift gift, Tie tie, Tail tail) {
        return new Wrapped(gift, tie, tail, Placing.CENTRED);
    }

    /** How a cloth fits the gift. */
    public Fit fit(Cloth cloth) {
        return tie.fit(gift, cloth.finished(), tail.usual(), placing);
    }

    /** The cloth tied; empty where it is too small. */
    public Optional<Fold> fold(Cloth cloth) {
        Fit fit = fit(cloth);
        return fit.holds() ? Optional.of(TiedFold.of(fit)) : Optional.empty();
    }
}
