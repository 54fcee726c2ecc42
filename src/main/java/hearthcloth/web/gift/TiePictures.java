package hearthcloth.web.gift;

import hearthcloth.draw.tied.Sample;
import hearthcloth.draw.tied.Thumbnail;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Length;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Pictures of ties round her gift in a plain cloth. A few are remembered, since each keystroke in another field shows
 * them again. Thread-safe.
 */
final class TiePictures {

    private static final int MOST = 120;

    /** What a picture shows. */
    private record Asked(Tie tie, Gift gift, Length tail) {}

    /**
     * A tie round a gift.
     *
     * @param tied and {@code laid}, before it is tied, as SVG
     * @param seenMm2 how much of the cloth is seen of it, in square millimetres
     */
    record Seen(String tied, String laid, double seenMm2) {}

    private final Map<Asked, Seen> known = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Seen> eldest) {
            return size() > MOST;
        }
    };

    Seen of(Tie tie, Gift gift, Length tail) {
        Asked asked = new Asked(tie, gift, tail);
        synchronized (known) {
            Seen seen = known.get(asked);
            if (seen != null) {
                return seen;
            }
        }
        TiedGift sample = Sample.of(tie, gift, tail);
        Seen drawn = new Seen(
                Thumbnail.of(sample), Thumbnail.laid(sample), sample.whatShows().seenMm2());
        synchronized (known) {
            known.put(asked, drawn);
        }
        return drawn;
    }
}
