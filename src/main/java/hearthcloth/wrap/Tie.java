package hearthcloth.wrap;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A way of wrapping and tying a gift in a square or oblong cloth. Sizes assume the gift in the middle unless a {@link
 * Placing} is given; what a corner needs for knot and tail is a {@link Tail}.
 */
public enum Tie {
    FOUR_CORNER("four-corner tie", "yotsu-musubi"),
    EDGE_ALONG_EDGE("four-corner tie, box square to the cloth", ""),
    ERRAND("errand wrap", "otsukai-tsutsumi"),
    FLAT("flat wrap", "hira-tsutsumi"),
    TWO_KNOT("two-knot wrap", "futatsu-musubi"),
    ONE_BOTTLE("one-bottle wrap", "bin-tsutsumi"),
    TWO_BOTTLES("two-bottle wrap", "bin-tsutsumi, two"),
    ROUND("round wrap", "suika-tsutsumi"),
    BOOKS("book wrap", "hon-tsutsumi"),
    ROLL("roll wrap", "maki-musubi");

    private final String words;
    private final String trade;

    Tie(String words, String trade) {
        this.words = words;
        this.trade = trade;
    }

    /** Our own name: {@code errand wrap}. */
    public String words() {
        return words;
    }

    /** The Japanese trade name (docs/sources.md#tie-names); empty where there is none. */
    public String trade() {
        return trade;
    }

    /** True when corners are knotted, so that a tail is needed. */
    public boolean isKnotted() {
        return this != FLAT;
    }

    /** The tie with this name: our name, with or without "wrap" or "tie", an earlier one of ours, or its trade name. */
    public static Optional<Tie> named(String text) {
        String plain = plain(text);
        return Stream.of(values())
                .filter(tie -> plain.equals(plain(tie.words))
                        || plain.equals(plain(tie.name()))
                        || (tie == EDGE_ALONG_EDGE && plain.equals(plain("four-corner edge along edge")))
                        || (!tie.trade.isEmpty() && plain.equals(plain(tie.trade))))
                .findFirst();
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z]+", " ")
                .replaceAll("\\b(wrap|tie|tied|set|the)\\b", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The ties that suit this gift, the usual one first. */
    public static List<Tie> suiting(Gift gift) {
        return Stream.of(values()).filter(tie -> tie.suits(gift)).toList();
    }

    /** True when this tie is made for such a gift. */
    public boolean suits(Gift gift) {
        return switch (this) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND, FLAT -> gift instanceof Gift.Box;
            case TWO_KNOT -> gift instanceof Gift.Box || gift instanceof Gift.Roll;
            case ONE_BOTTLE -> gift instanceof Gift.Bottle;
            case TWO_BOTTLES -> gift instanceof Gift.TwoBottles;
            case ROUND -> gift instanceof Gift.Round;
            case BOOKS -> gift instanceof Gift.Books;
            case ROLL -> gift instanceof Gift.Roll;
        };
    }

    /**
     * The smallest square that ties this gift in its middle, rounded up to a whole nanometre.
     *
     * @param tail what each knotted corner needs for knot and tail
     * @throws IllegalArgumentException when the tie does not suit the gift
     */
    public Length smallestSquare(Gift gift, Length tail) {
        double side =
                demands(gift, tail).stream().mapToDouble(Demand::square).max().orElseThrow();
        return Outward.enough(side);
    }

    /**
     * The smallest cloth of these proportions that ties the gift placed in this way, found by bisection to the
     * nanometre; its width is rounded up and its height follows.
     */
    public Size smallest(Gift gift, Length tail, Size proportions, Placing placing) {
        List<Demand> demands = demands(gift, tail);
        long low = 0;
        long high = Length.of(40, hearthcloth.measure.Unit.METRE).nm();
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            Spread cloth = Spread.of(proportioned(middle, proportions), placing);
            if (demands.stream().allMatch(demand -> demand.isMet(cloth))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return proportioned(high, proportions);
    }

    private static Size proportioned(long width, Size proportions) {
        double ratio = (double) proportions.height().nm() / proportions.width().nm();
        return new Size(new Length(width), new Length(Rounding.NEAREST.whole(width * ratio)));
    }

    /** What this cloth leaves at each corner, and whether all is covered, with the gift in the middle. */
    public Fit fit(Gift gift, Size cloth, Length tail) {
        return fit(gift, cloth, tail, Placing.CENTRED);
    }

    /** What this cloth leaves at each corner, and whether all is covered, with the gift placed in this way. */
    public Fit fit(Gift gift, Size cloth, Length tail, Placing placing) {
        Spread spread = Spread.of(cloth, placing);
        List<Fit.Answer> answers = demands(gift, tail).stream()
                .map(demand -> Fit.Answer.of(demand, spread))
                .toList();
        return new Fit(this, gift, cloth, tail, placing, answers);
    }

    /**
     * What this cloth leaves at each corner, with ends as long as it has them: the usual ones or, where it is too small for
     * those and large enough for the least, the longest that it ties with. Found by bisection to the nanometre.
     */
    public Fit fit(Gift gift, Size cloth, Tail tail, Placing placing) {
        Fit usual = fit(gift, cloth, tail.usual(), placing);
        if (usual.holds()
                || !isKnotted()
                || !fit(gift, cloth, tail.least(), placing).holds()) {
            return usual;
        }
        long low = tail.least().nm();
        long high = tail.usual().nm();
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (fit(gift, cloth, new Length(middle), placing).holds()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return fit(gift, cloth, new Length(low), placing);
    }

    /**
     * The largest gift of {@code shape}'s proportions that this cloth ties, with the gift in the middle, by bisection
     * to the nanometre; empty when not even {@link Gift#SHORTEST} can be tied.
     */
    public Optional<Gift> largest(Gift shape, Size cloth, Length tail) {
        Spread spread = Spread.of(cloth, Placing.CENTRED);
        // the leading measure may not be the longest one, and no measure may leave the gift's own bounds
        double share = (double) shape.leading().nm() / shape.longestSide().nm();
        long low = Rounding.UP.whole(Gift.SHORTEST.nm() * share);
        long high = Rounding.DOWN.whole(Gift.LONGEST.nm() * share);
        if (!ties(shape.like(new Length(low)), spread, tail)) {
            return Optional.empty();
        }
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (ties(shape.like(new Length(middle)), spread, tail)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(shape.like(new Length(low)));
    }

    private boolean ties(Gift gift, Spread cloth, Length tail) {
        return demands(gift, tail).stream().allMatch(demand -> demand.isMet(cloth));
    }

    /** Everything this tie needs of the cloth. */
    List<Demand> demands(Gift gift, Length tail) {
        double t = Outward.mm(tail);
        if (gift instanceof Gift.Box box) {
            return switch (this) {
                case FOUR_CORNER -> BoxDemands.fourCorner(box, t);
                case EDGE_ALONG_EDGE -> BoxDemands.edgeAlongEdge(box, t);
                case ERRAND -> BoxDemands.errand(box, t);
                case FLAT -> BoxDemands.flat(box);
                case TWO_KNOT -> BoxDemands.twoKnot(box, t);
                default -> throw unsuited(gift);
            };
        }
        if (gift instanceof Gift.Bottle bottle && this == ONE_BOTTLE) {
            return CurvedDemands.bottle(bottle, t);
        }
        if (gift instanceof Gift.TwoBottles two && this == TWO_BOTTLES) {
            return CurvedDemands.twoBottles(two, t);
        }
        if (gift instanceof Gift.Round round && this == ROUND) {
            return CurvedDemands.round(round, t);
        }
        if (gift instanceof Gift.Books books && this == BOOKS) {
            return CurvedDemands.books(books, t);
        }
        if (gift instanceof Gift.Roll roll && this == ROLL) {
            return CurvedDemands.roll(roll, t);
        }
        if (gift instanceof Gift.Roll roll && this == TWO_KNOT) {
            return BoxDemands.twoKnot(roll, t);
        }
        throw unsuited(gift);
    }

    private IllegalArgumentException unsuited(Gift gift) {
        return new IllegalArgumentException("the " + words + " is not for " + gift);
    }
}
