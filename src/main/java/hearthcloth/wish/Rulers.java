package hearthcloth.wish;

import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which ruler a maker uses: eighths of an inch, or millimetres. */
public final class Rulers {

    private Rulers() {}

    public static Ruler of(Unit unit) {
        return switch (unit) {
            case INCH, FOOT, YARD -> Ruler.EIGHTHS;
            case MILLIMETRE, CENTIMETRE, METRE -> Ruler.MILLIMETRES;
        };
    }

    /**
     * The ruler that {@code --unit} asks for.
     *
     * @throws BadInputException when it is neither inches nor centimetres
     */
    public static Optional<Ruler> wished(@Nullable String option) {
        if (option == null) {
            return Optional.empty();
        }
        return Optional.of(Unit.named(option)
                .filter(unit -> unit == Unit.INCH || unit == Unit.CENTIMETRE)
                .map(Rulers::of)
                .orElseThrow(() -> new BadInputException(RefusingSentences.wishAt(
                        Argument.text("--unit"), RefusingSentences.wishUnit(Argument.text(ListWords.plain(option)))))));
    }
}
