package hearthcloth.stash;

import hearthcloth.colour.Colour;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What the lines of one fabric say about it; where one line says nothing, another one's word holds. */
final class FabricLines {

    /** Something that is said, and the line that says it. */
    private record Said<T>(T what, int line) {}

    private final String name;
    private Optional<Said<Colour>> colour = Optional.empty();
    private Optional<Said<Colour>> wrong = Optional.empty();
    private Optional<Said<Fabric.Faces>> faces = Optional.empty();
    private Optional<Said<Fabric.Nap>> nap = Optional.empty();

    FabricLines(String name) {
        this.name = name;
    }

    void colour(Colour said, int line, List<String> warnings) {
        colour = first(colour, new Said<>(said, line), "", warnings);
    }

    /** The colour of its wrong side. */
    void wrong(Colour said, int line, List<String> warnings) {
        wrong = first(wrong, new Said<>(said, line), "the wrong side of ", warnings);
    }

    private Optional<Said<Colour>> first(
            Optional<Said<Colour>> before, Said<Colour> now, String side, List<String> warnings) {
        if (before.isPresent() && !before.get().what().equals(now.what())) {
            warnings.add("line " + now.line() + ": " + side + Names.quoted(name) + " is "
                    + now.what().hex() + " here and " + before.get().what().hex() + " on line "
                    + before.get().line() + "; the first one is used");
        }
        return before.or(() -> Optional.of(now));
    }

    void faces(Fabric.Faces said, int line, List<Problem> problems) {
        faces = agreed(faces, new Said<>(said, line), StashColumn.FACES, problems);
    }

    void nap(Fabric.Nap said, int line, List<Problem> problems) {
        nap = agreed(nap, new Said<>(said, line), StashColumn.NAP, problems);
    }

    private <T extends Enum<T>> Optional<Said<T>> agreed(
            Optional<Said<T>> before, Said<T> now, StashColumn column, List<Problem> problems) {
        if (before.isPresent() && before.get().what() != now.what()) {
            problems.add(new Problem(
                    now.line(),
                    column.word(),
                    Names.quoted(name) + " is " + word(now.what()) + " here and "
                            + word(before.get().what()) + " on line "
                            + before.get().line()
                            + "; a fabric is one or the other, so mend one line or give it another name"));
        }
        return before.or(() -> Optional.of(now));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    Optional<Colour> colour() {
        return colour.map(Said::what);
    }

    /** The fabric, with a colour that differs from all in {@code taken} where no line gives one. */
    Fabric fabric(Set<Colour> taken) {
        return new Fabric(
                name,
                colour().orElseGet(() -> NamedColours.pick(name, taken)),
                faces.map(Said::what).orElse(Fabric.Faces.SAME),
                nap.map(Said::what).orElse(Fabric.Nap.ANY),
                wrong.map(Said::what));
    }
}
