package hearthcloth.web.gift;

import java.util.List;
import java.util.Optional;

/** The kinds of gift the page asks for, each with the measures it needs, in the order a gift is written. */
public enum GiftShape {
    BOX("box", "Box", "Length, Width, Height"),
    BOTTLE("bottle", "Bottle", "Across, Height"),
    TWO_BOTTLES("two bottles", "Two bottles", "Across each, Height"),
    ROUND("ball", "Something round", "Across"),
    BOOKS("books", "Two books", "Height, Width, Thickness each"),
    ROLL("roll", "Roll", "Across, Length");

    private final String written;
    private final String words;
    private final String measures;

    GiftShape(String written, String words, String measures) {
        this.written = written;
        this.words = words;
        this.measures = measures;
    }

    public String words() {
        return words;
    }

    public List<String> measures() {
        return List.of(measures.split(", "));
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
