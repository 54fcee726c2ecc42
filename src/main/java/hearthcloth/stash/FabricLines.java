package hearthcloth.stash;

import hearthcloth.colour.Colour;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.Sentence;
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

    void colour(Colour said, int line, List<Sentence> warnings) {
        colour = first(colour, new Said<>(said, line), "right", warnings);
    }

    /** The colour of its wrong side. */
    void wrong(Colour said, int line, List<Sentence> warnings) {
        wrong = first(wrong, new Said<>(said, line), "wrong", warnings);
    }

    private Optional<Said<Colour>> first(
            Optional<Said<Colour>> before, Said<Colour> now, String side, List<Sentence> warnings) {
        if (before.isPresent() && !before.get().what().equals(now.what())) {
            warnings.add(RefusingSentences.fileTwoColours(
                    Argument.number(before.get().line()),
                    Argument.number(now.line()),
                    Argument.text(Names.quoted(name)),
                    Argument.text(now.what().hex()),
                    side,
                    Argument.text(before.get().what().hex())));
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
                    RefusingSentences.fileDisagree(
                            Argument.number(before.get().line()),
                            Argument.text(Names.quoted(name)),
                            Argument.text(word(now.what())),
                            Argument.text(word(before.get().what())))));
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
