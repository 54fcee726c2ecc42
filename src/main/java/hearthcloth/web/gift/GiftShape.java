package hearthcloth.web.gift;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Unit;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The kinds of gift the page asks for, each with the measures it needs, in the order a gift is written. */
public enum GiftShape {
    BOX("box", "long 12, wide 9, high 4"),
    BOTTLE("bottle", "across 3, high 12"),
    TWO_BOTTLES("two bottles", "across 3, high 12"),
    ROUND("ball", "across 8"),
    BOOKS("books", "high 9, wide 6, thick 1"),
    ROLL("roll", "across 3, long 14");

    private final String written;
    private final String measures;

    GiftShape(String written, String measures) {
        this.written = written;
        this.measures = measures;
    }

    /** What it is called. */
    public String words(Language language) {
        return FramingWords.in(language).giftKind(name());
    }

    /** By which each measure is known. */
    public List<String> measures() {
        return parts(0);
    }

    /** Proportions to draw it in while a measure is not known: those of something common (no source). */
    List<Double> usual() {
        return parts(1).stream().map(Double::valueOf).toList();
    }

    /** As she typed them, in inches; what is not there or cannot be read in the usual proportion to the first that can. */
    List<Double> proportions(List<String> given, Settings settings) {
        List<Double> usual = usual();
        List<Optional<Double>> read = new ArrayList<>();
        for (int i = 0; i < usual.size(); i++) {
            read.add(inches(i < given.size() ? given.get(i) : "", settings));
        }
        double share = 1;
        for (int i = usual.size() - 1; i >= 0; i--) {
            share = read.get(i).isPresent() ? read.get(i).get() / usual.get(i) : share;
        }
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < usual.size(); i++) {
            all.add(read.get(i).orElse(usual.get(i) * share));
        }
        return all;
    }

    private static Optional<Double> inches(String written, Settings settings) {
        try {
            double inches = written.isBlank()
                    ? 0
                    : Measures.length(written, settings.bare()).in(Unit.INCH);
            return Optional.of(inches).filter(one -> one > 0);
        } catch (MeasureException e) {
            return Optional.empty();
        }
    }

    private List<String> parts(int which) {
        return Stream.of(measures.split(", "))
                .map(one -> one.split(" ", -1)[which])
                .toList();
    }

    /** Something common of this shape (no source), as a gift is written; in inches, whatever her ruler. */
    public String example() {
        return written + " " + String.join(" x ", parts(1)) + " in";
    }

    /** In an address: {@code two-bottles}. */
    public String word() {
        return written.replace(' ', '-');
    }

    static GiftShape named(String word) {
        for (GiftShape shape : values()) {
            if (shape.word().equals(word)) {
                return shape;
            }
        }
        return BOX;
    }

    /** The gift as it is written, once every measure is there. */
    Optional<String> text(List<String> given) {
        if (given.size() < measures().size()
                || given.subList(0, measures().size()).stream().anyMatch(String::isBlank)) {
            return Optional.empty();
        }
        return Optional.of(
                written + " " + String.join(" x ", given.subList(0, measures().size())));
    }
}
