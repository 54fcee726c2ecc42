package hearthcloth.wish;

import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Seam, hem, margins and the rules of piecing, from the words; what is left out is what is usual in the unit. */
final class MakingReader {

    /** Allowances beyond this are a slip of the unit (docs/sources.md#input-limits). */
    private static final Length WIDEST_ALLOWANCE = Length.cm(10);

    private static final Length MOST_LEEWAY = Length.cm(10);
    private static final Length MOST_PIECE = Length.cm(100);

    private final WishWords words;
    private final OptionText text;
    private final Ruler ruler;
    private final Usual usual;

    MakingReader(WishWords words, OptionText text, Usual usual) {
        this.words = words;
        this.text = text;
        this.ruler = usual.ruler();
        this.usual = usual;
    }

    Making making() {
        Making usual = this.usual.making();
        Hem hem = text.read(WishField.HEM.option(), words.of(WishField.HEM), usual.hem(), this::hem);
        Hem.Corner corner = text.word(
                WishField.CORNER.option(),
                words.of(WishField.CORNER),
                usual.hem().corner());
        return usual.withSeam(text.read(WishField.SEAM.option(), words.of(WishField.SEAM), usual.seam(), this::seam))
                .withHem(new Hem(hem.first(), hem.second(), corner))
                .withLeeway(length(WishField.LEEWAY.option(), words.of(WishField.LEEWAY), usual.leeway(), MOST_LEEWAY))
                .withTrim(length(WishField.TRIM.option(), words.of(WishField.TRIM), usual.trim(), MOST_LEEWAY))
                .felledOn(text.word(WishField.FELL.option(), words.of(WishField.FELL), usual.fell()));
    }

    PiecingRules rules() {
        PiecingRules usual = this.usual.rules();
        Length least =
                length(WishField.LEAST_PIECE.option(), words.of(WishField.LEAST_PIECE), usual.leastPiece(), MOST_PIECE);
        if (!least.isPositive()) {
            text.fault(WishField.LEAST_PIECE.option(), RefusingSentences.wishNothing());
        }
        return new PiecingRules(
                least,
                length(WishField.CLEARANCE.option(), words.of(WishField.CLEARANCE), usual.clearance(), MOST_PIECE),
                text.whole(WishField.MOST_JOINS.option(), words.of(WishField.MOST_JOINS), usual.mostJoins(), 0, 40));
    }

    private Length length(
            String option, @org.jspecify.annotations.Nullable String written, Length fallback, Length most) {
        return text.read(option, written, fallback, given -> {
            Length length = Measures.length(given, ruler.unit());
            if (length.isMoreThan(most)) {
                throw new RefusedException(
                        RefusingSentences.wishNoCloth(Argument.of(most, Rounding.DOWN), Argument.text(given)));
            }
            return length;
        });
    }

    private SeamKind seam(String written) {
        Optional<SeamKind> named = SeamKind.named(written);
        if (named.isPresent()) {
            return named.get();
        }
        if (!written.contains("+")) {
            String names = SeamKind.table().stream()
                    .map(kind -> "\"" + kind.name() + "\"")
                    .collect(Collectors.joining(", "));
            throw new RefusedException(RefusingSentences.wishSeam(Argument.text(names), Argument.text(written)));
        }
        List<Length> two = two(written, "seam");
        Length narrow = two.get(0);
        Length wide = two.get(1);
        if (!wide.isMoreThan(narrow)) {
            throw new RefusedException(RefusingSentences.wishFell(Argument.text(written)));
        }
        return SeamKind.felled(narrow, wide);
    }

    private Hem hem(String written) {
        List<Length> two = two(written, "hem");
        return Hem.square(two.get(0), two.get(1));
    }

    private List<Length> two(String written, String what) {
        List<Length> lengths = Measures.lengths(written.replace("+", " x "), ruler.unit());
        if (lengths.size() != 2) {
            throw new RefusedException(RefusingSentences.wishPair(lengths.size(), Argument.text(written), what));
        }
        for (Length length : lengths) {
            if (!length.isPositive() || length.isMoreThan(WIDEST_ALLOWANCE)) {
                throw new RefusedException(RefusingSentences.wishPart(
                        Argument.of(WIDEST_ALLOWANCE, Rounding.DOWN), Argument.text(written)));
            }
        }
        return lengths;
    }
}
