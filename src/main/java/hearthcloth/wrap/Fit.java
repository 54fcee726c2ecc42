package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.tying.TyingWords;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one cloth does round one gift in one tie: what is left for each thing the tie needs.
 *
 * @param tail what each knotted corner should have for knot and tail
 * @param answers one for each demand of the tie
 */
public record Fit(Tie tie, Gift gift, Size cloth, Length tail, Placing placing, List<Answer> answers) {

    /**
     * One demand and what the cloth has for it.
     *
     * @param corner of the cloth, or null where the demand is on its edges
     * @param left beyond the path over the gift, rounded down; below zero when the cloth ends short of it
     * @param needed beyond that path
     */
    public record Answer(Reason reason, @Nullable Corner corner, Length left, Length needed, boolean enough) {

        static Answer of(Demand demand, Spread cloth) {
            return new Answer(
                    demand.reason(),
                    corner(demand.reach()),
                    Outward.there(demand.left(cloth)),
                    Outward.there(demand.spare()),
                    demand.isMet(cloth));
        }

        private static @Nullable Corner corner(Reach reach) {
            if (reach instanceof Reach.Tip tip) {
                return tip.corner();
            }
            if (reach instanceof Reach.Ray ray) {
                return ray.corner();
            }
            return reach instanceof Reach.FromBase from ? from.corner() : null;
        }

        /** What is left over; below zero when the cloth is short. */
        public Length spare() {
            return left.minus(needed);
        }
    }

    public Fit {
        answers = List.copyOf(answers);
    }

    /** True when every corner has its tail or tuck and the gift is covered. */
    public boolean holds() {
        return answers.stream().allMatch(Answer::enough);
    }

    /** The demand that is met most narrowly, or missed by most. */
    public Answer tightest() {
        return answers.stream().min(Comparator.comparing(Answer::spare)).orElseThrow();
    }

    /** The smallest cloth of these proportions that would do, with the gift placed in the same way. */
    Size wouldDo() {
        return tie.smallest(gift, tail, cloth, placing);
    }

    /** What sewing may take before the ends get shorter; empty where it is less than a mark of the ruler. */
    private String toSpare(Voice voice) {
        Length spare = voice.ruler().mark(cloth.width().minus(wouldDo().width()), Rounding.DOWN);
        return spare.isPositive() ? voice.tying().fitSewnSmaller(voice.write(spare, Rounding.DOWN)) : "";
    }

    /** A sentence for the maker: that it ties and what is left, or what is short and which size would do. */
    public String sentence(Voice voice) {
        return holds() ? enough(voice) : tooSmall(voice);
    }

    private String enough(Voice voice) {
        TyingWords words = voice.tying();
        Answer worst = tightest();
        String about = gift.describe(voice);
        String name = words.tieName(tie.name());
        if (worst.spare().isLessThan(voice.ruler().step())) {
            return tie.isKnotted()
                    ? words.fitJustKnotted(about, voice.write(tail, Rounding.NEAREST), name)
                    : words.fitJust(about, name);
        }
        String spare = voice.write(worst.spare(), Rounding.DOWN);
        String reason = words.reason(worst.reason().name());
        String ties = tie.isKnotted()
                ? words.fitTies(about, reason, spare, name)
                : words.fitWraps(about, reason, spare, name);
        return voice.sentences(List.of(ties, toSpare(voice)));
    }

    private String tooSmall(Voice voice) {
        TyingWords words = voice.tying();
        Answer worst = tightest();
        Corner corner = worst.corner();
        Size enough = wouldDo();
        return words.fitTooSmall(
                words.corner(corner == null ? "CLOTH" : corner.name()),
                gift.describe(voice),
                voice.write(Length.ZERO.minus(worst.spare()), Rounding.UP),
                words.reason(worst.reason().name()),
                enough.isSquare() ? voice.write(enough.width(), Rounding.UP) : voice.write(enough, Rounding.UP),
                words.tieName(tie.name()));
    }
}
