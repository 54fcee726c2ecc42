package hearthcloth.wish;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.model.Wish.Cut;
import hearthcloth.plan.model.Wish.Looks;
import hearthcloth.plan.model.Wish.Outside;
import hearthcloth.plan.model.Wish.Preferences;
import hearthcloth.plan.model.Wish.Shape;
import hearthcloth.plan.model.Wish.Target;
import hearthcloth.plan.model.Wish.Tied;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.wrap.Slack;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** From the words to a wish that can be planned, or every reason why not. */
public final class WishReader {

    /** Sizes and rounds outside these limits are slips of the unit or the count (docs/sources.md#input-limits). */
    private static final Length LEAST_CLOTH = Length.cm(5);

    private static final Length MOST_CLOTH = Length.cm(500);
    private static final int MOST_ROUNDS = 40;
    private static final String OPEN = "stash";
    private static final String NONE = "none";

    private final WishWords words;
    private final Stash stash;
    private final Usual usual;
    private final Ruler ruler;
    private final OptionText text;

    /** Wishes typed at a door. */
    public WishReader(WishWords words, Stash stash, Usual usual, Door door) {
        this.words = words;
        this.stash = stash;
        this.usual = usual;
        this.ruler = usual.ruler();
        this.text = new OptionText(door, usual.ruler());
    }

    /**
     * The wish.
     *
     * @param gift what the cloth is for, where it is for a gift
     * @throws BadInputException with a sentence for each option that cannot be used
     */
    public Wish wish(Optional<GiftWish> gift) {
        MakingReader reader = new MakingReader(words, text, usual);
        Making making = reader.making();
        PiecingRules rules = reader.rules();
        text.check();
        Target target = target(gift);
        Shape shape = shape(making);
        Preferences preferences = preferences(gift);
        text.check();
        return new Wish(target, shape, making, rules, preferences);
    }

    private Target target(Optional<GiftWish> gift) {
        if (words.has(WishField.SIZE) && gift.isPresent()) {
            text.fault(WishField.SIZE.option(), RefusingSentences.wishBoth());
        }
        Optional<Size> size =
                text.read(WishField.SIZE.option(), words.of(WishField.SIZE), Optional.empty(), this::cloth);
        return gift.map(wish -> new Target(Optional.of(Size.square(fitting(wish))), true))
                .orElseGet(() -> size.map(wished -> new Target(Optional.of(wished), false))
                        .orElseGet(Target::none));
    }

    private Length fitting(GiftWish gift) {
        Length side = slack().on(gift.least(ruler), ruler);
        if (side.isMoreThan(MOST_CLOTH)) {
            text.fault(
                    WishField.GIFT.option(),
                    RefusingSentences.wishNeed(
                            Argument.of(MOST_CLOTH, Rounding.DOWN),
                            Argument.of(side, Rounding.UP),
                            RulingSentences.tie(gift.tie().name())));
        }
        return side;
    }

    /** How much larger than the least a cloth for a gift is planned. */
    public Slack slack() {
        return text.read(WishField.SLACK.option(), words.of(WishField.SLACK), usual.slack(), this::slack);
    }

    private Slack slack(String written) {
        if (written.strip().equalsIgnoreCase(NONE)) {
            return Slack.NONE;
        }
        Length length = Measures.length(written, ruler.unit());
        if (length.isMoreThan(Slack.MOST)) {
            throw new RefusedException(
                    RefusingSentences.wishSlack(Argument.of(Slack.MOST, Rounding.DOWN), Argument.text(written)));
        }
        return new Slack(length);
    }

    private Optional<Size> cloth(String written) {
        Size size = Measures.size(written, ruler.unit());
        between(written, size.width(), LEAST_CLOTH);
        between(written, size.height(), LEAST_CLOTH);
        return Optional.of(size);
    }

    private void between(String written, Length side, Length least) {
        if (side.isLessThan(least) || side.isMoreThan(MOST_CLOTH)) {
            throw new RefusedException(RefusingSentences.wishReach(
                    Argument.of(least, Rounding.UP), Argument.of(MOST_CLOTH, Rounding.DOWN), Argument.text(written)));
        }
    }

    private Shape shape(Making making) {
        Optional<Cut<Size>> hearth = text.read(
                WishField.HEARTH.option(),
                words.of(WishField.HEARTH),
                Optional.empty(),
                written -> hearth(written, making));
        List<Cut<Length>> bars = text.read(
                WishField.BARS.option(), words.of(WishField.BARS), List.of(), written -> bars(written, making));
        int count = isOpen(words.of(WishField.ROUNDS))
                ? 0
                : text.whole(WishField.ROUNDS.option(), words.of(WishField.ROUNDS), 0, 1, MOST_ROUNDS);
        if (count > 0 && bars.size() > count) {
            text.fault(WishField.BARS.option(), RefusingSentences.wishWidths(count, bars.size()));
        }
        Optional<Order> order = isOpen(words.of(WishField.ORDER))
                ? Optional.empty()
                : text.read(WishField.ORDER.option(), words.of(WishField.ORDER), Optional.empty(), this::order);
        return new Shape(hearth, bars, count == 0 ? Optional.empty() : Optional.of(count), order);
    }

    private Optional<Order> order(String written) {
        return Optional.of(Order.named(written)
                .orElseThrow(() -> new RefusedException(RefusingSentences.wishOrder(Argument.text(written)))));
    }

    private Optional<Cut<Size>> hearth(String written, Making making) {
        if (isOpen(written)) {
            return Optional.empty();
        }
        Reading reading = Reading.of(written);
        Size size = Measures.size(reading.measure(), ruler.unit());
        Length eaten = making.seam().narrow().max(making.hem().allowance()).times(2);
        for (Length side : List.of(size.width(), size.height())) {
            between(written, side, new Length(1));
            enough(written, reading, side, eaten, making.seam().band());
        }
        return Optional.of(new Cut<>(size, reading.finished()));
    }

    private List<Cut<Length>> bars(String written, Making making) {
        if (isOpen(written)) {
            return List.of();
        }
        Reading reading = Reading.of(written);
        String listed = reading.measure().replaceAll("(?<!\\d)[,;]|[,;](?!\\d)|;", " x ");
        List<Length> widths = Measures.lengths(listed, ruler.unit());
        Length outer = making.seam().narrow().max(making.hem().allowance());
        Length eaten = making.seam().wide().plus(outer).plus(making.trim());
        for (Length width : widths) {
            between(written, width, new Length(1));
            enough(written, reading, width, eaten, making.seam().band());
        }
        if (widths.size() > MOST_ROUNDS) {
            throw new RefusedException(
                    RefusingSentences.wishManyWidths(Argument.number(widths.size()), Argument.number(MOST_ROUNDS)));
        }
        return widths.stream()
                .map(width -> new Cut<>(width, reading.finished()))
                .toList();
    }

    /** Checks that what shows is more than the band of the seam that lies on it. */
    private void enough(String written, Reading reading, Length given, Length eaten, Length band) {
        Length needed = reading.finished() ? band : eaten.plus(band);
        if (!given.isMoreThan(needed)) {
            throw new RefusedException(RefusingSentences.wishNarrow(
                    Argument.of(band, Rounding.UP),
                    Argument.of(eaten, Rounding.UP),
                    reading.finished() ? "finished" : "cut",
                    Argument.of(needed, Rounding.UP),
                    Argument.text(written)));
        }
    }

    private Preferences preferences(Optional<GiftWish> gift) {
        List<String> fabrics = text.read(
                WishField.FABRICS.option(),
                words.of(WishField.FABRICS),
                List.of(),
                written -> FabricChoice.parse(written, stash));
        int proposals = text.whole(WishField.PROPOSALS.option(), words.of(WishField.PROPOSALS), 4, 1, 12);
        long seed = text.read(WishField.SEED.option(), words.of(WishField.SEED), 1L, WishReader::seed);
        Optional<Outside> outside = text.read(
                WishField.SHOW.option(), words.of(WishField.SHOW), Optional.empty(), written -> show(written, gift));
        List<Scheme.Kind> schemes = isOpen(words.of(WishField.SCHEME))
                ? List.of()
                : text.read(WishField.SCHEME.option(), words.of(WishField.SCHEME), List.of(), WishReader::schemes);
        Contrast contrast = text.read(
                WishField.CONTRAST.option(), words.of(WishField.CONTRAST), Contrast.READS, WishReader::contrast);
        Looks looks = new Looks(outside, schemes.stream().findFirst(), contrast, gift.map(this::tied));
        return new Preferences(fabrics, proposals, seed, ruler, looks)
                .mixed(schemes.stream().skip(1).findFirst());
    }

    /** One plan of colour, or two that are mixed: {@code two halves + one bright scrap}. */
    private static List<Scheme.Kind> schemes(String written) {
        List<Scheme.Kind> kinds =
                Stream.of(written.split("\\+", -1)).map(WishReader::scheme).toList();
        if (kinds.size() > 2 || (kinds.size() == 2 && !Scheme.MIXED.contains(kinds.get(1)))) {
            throw new RefusedException(RefusingSentences.wishMixed(Argument.text(written)));
        }
        return kinds;
    }

    private static Scheme.Kind scheme(String written) {
        return Scheme.Kind.named(written)
                .orElseThrow(() -> new RefusedException(RefusingSentences.wishScheme(
                        Argument.text(Scheme.WISHED.stream()
                                .map(kind -> kind.title().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))),
                        Argument.text(written))));
    }

    private static Contrast contrast(String written) {
        return Contrast.named(written)
                .orElseThrow(() -> new RefusedException(RefusingSentences.wishContrast(
                        Argument.text(
                                Stream.of(Contrast.values()).map(Contrast::word).collect(Collectors.joining(", "))),
                        Argument.text(written))));
    }

    private Tied tied(GiftWish wish) {
        return new Tied(wish.gift(), wish.tie(), GiftWish.tail(ruler), wish.placing());
    }

    private Optional<Outside> show(String written, Optional<GiftWish> gift) {
        List<String> names = FabricChoice.parse(written, stash);
        if (names.size() > 1) {
            throw new RefusedException(RefusingSentences.wishShow(Argument.text(written)));
        }
        return gift.map(
                wish -> new Outside(names.get(0), wish.gift(), wish.tie(), GiftWish.tail(ruler), wish.placing()));
    }

    private static Long seed(String written) {
        if (!written.strip().matches("-?\\d{1,18}")) {
            throw new RefusedException(RefusingSentences.wishSeed(Argument.text(written)));
        }
        return Long.valueOf(written.strip());
    }

    private static boolean isOpen(@Nullable String written) {
        return written == null || written.strip().equalsIgnoreCase(OPEN);
    }

    /** A measure and whether it is meant as cut or as it finishes. */
    private record Reading(String measure, boolean finished) {

        static Reading of(String written) {
            String plain = written.strip();
            String lower = plain.toLowerCase(Locale.ROOT);
            for (String word : List.of("finished", "cut")) {
                if (lower.endsWith(" " + word)) {
                    String measure = plain.substring(0, plain.length() - word.length());
                    return new Reading(measure.strip(), word.equals("finished"));
                }
            }
            return new Reading(plain, false);
        }
    }
}
