package hearthcloth.web.gift;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.work.Purpose;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * How she wants to see a cloth tied, in her own words: round what, in which tie, and how the cloth lies under it.
 *
 * @param gift as {@link Gift#parse} reads it; empty where she has not said
 * @param tie its words; the first that suits where they are empty or do not suit
 * @param right off the middle to the right, with a minus to the left; {@code away} from her, with a minus towards her
 */
public record TiedAsked(String gift, String tie, Face out, int turns, String right, String away) {

    private static final String MINUS = "[-−–]\\s*";

    /** What she chose on the page; where she has not, what she plans for. */
    public static TiedAsked read(UnaryOperator<@Nullable String> field, Purpose wished) {
        String gift = field.apply("gift");
        String turns = text(field.apply("turn"));
        return new TiedAsked(
                gift == null ? wished.gift() : gift.strip(),
                gift == null ? wished.tie() : text(field.apply("tie")),
                text(field.apply("out")).equals("back") ? Face.BACK : Face.FRONT,
                turns.matches("[0-3]") ? Integer.parseInt(turns) : 0,
                text(field.apply("right")),
                text(field.apply("away")));
    }

    private static String text(@Nullable String given) {
        return given == null ? "" : given.strip();
    }

    /** The gift; empty where she has not said. */
    private Optional<Gift> thing(Unit bare) {
        return gift.isEmpty() ? Optional.empty() : Optional.of(Gift.parse(gift, bare));
    }

    /** The ties that suit it. */
    public List<Tie> ties(Unit bare) {
        return thing(bare).map(Tie::suiting).orElse(List.of());
    }

    /** The gift with tie and placing. */
    public Optional<Wrapped> wrapped(Settings settings) {
        return thing(settings.bare()).map(thing -> {
            List<Tie> suiting = Tie.suiting(thing);
            Tie chosen = Tie.named(tie).filter(suiting::contains).orElse(suiting.get(0));
            return new Wrapped(thing, chosen, Purpose.tail(settings.ruler()), placing(settings.bare()));
        });
    }

    private Placing placing(Unit bare) {
        return new Placing(shift(right, bare), shift(away, bare), turns, out);
    }

    /**
     * A length that may be below zero.
     *
     * @throws MeasureException when it cannot be read or is more than any gift is long
     */
    private static Length shift(String written, Unit bare) {
        if (written.isEmpty()) {
            return Length.ZERO;
        }
        boolean back = written.matches(MINUS + ".*");
        Length length = Measures.length(back ? written.replaceFirst(MINUS, "") : written, bare);
        if (length.isMoreThan(Gift.LONGEST)) {
            throw new RefusedException(RefusingSentences.wishFar(Argument.text(written)));
        }
        return back ? Length.ZERO.minus(length) : length;
    }

    /** The same as the end of an address. */
    public String query() {
        return "?gift=" + encoded(gift) + "&tie=" + encoded(tie) + "&out=" + (out == Face.BACK ? "back" : "front")
                + "&turn=" + turns + "&right=" + encoded(right) + "&away=" + encoded(away);
    }

    /** The same round another gift, in the tie that suits that first. */
    public TiedAsked round(String other) {
        return new TiedAsked(other, "", out, turns, right, away);
    }

    /** The same in another tie. */
    public TiedAsked in(String other) {
        return new TiedAsked(gift, other, out, turns, right, away);
    }

    /** The same with this face outside. */
    public TiedAsked with(Face other) {
        return new TiedAsked(gift, tie, other, turns, right, away);
    }

    /** The same with the cloth turned so many quarters, anticlockwise. */
    public TiedAsked turned(int quarters) {
        return new TiedAsked(gift, tie, out, quarters, right, away);
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** Whether the gift lies off the cloth's middle. */
    public boolean isOff() {
        return !right.isEmpty() || !away.isEmpty();
    }

    public boolean isBackOut() {
        return out == Face.BACK;
    }
}
