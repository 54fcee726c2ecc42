package hearthcloth.work;

import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What she wrote of a finished cloth.
 *
 * @param real what it really measures; missing while she has not measured it
 * @param word a word to herself; may be blank
 * @param used each time it wrapped something again, the earliest first
 */
public record Keepsake(@Nullable Measured real, String word, List<Use> used) {

    public static final Keepsake NOTHING = new Keepsake(null, "", List.of());

    private static final Length LONGEST = Length.of(100, Unit.METRE);

    /** The longest note that is read. */
    public static final int LONGEST_NOTE = 200;

    /**
     * The finished cloth, measured.
     *
     * @param corners corner to corner, as many of the two diagonals as she measured
     */
    public record Measured(Length width, Length height, List<Length> corners) {

        public Measured {
            corners = List.copyOf(corners);
        }

        private boolean isReadable() {
            return corners.size() <= 2
                    && Stream.concat(Stream.of(width, height), corners.stream())
                            .allMatch(each -> each.isPositive() && !each.isMoreThan(LONGEST));
        }
    }

    /** One time it wrapped something: when, what and for whom, as she writes it; each may be blank. */
    public record Use(String day, String what, String who) {

        private boolean isReadable() {
            return Stream.of(day, what, who).allMatch(Keepsake::isNote);
        }
    }

    public Keepsake {
        used = List.copyOf(used);
    }

    Keepsake and(Use use) {
        List<Use> more = new ArrayList<>(used);
        more.add(use);
        return new Keepsake(real, word, more);
    }

    /** What it really measures; empty while she has not measured it. */
    public Optional<Measured> measured() {
        return Optional.ofNullable(real);
    }

    private static boolean isNote(String text) {
        return text.length() <= LONGEST_NOTE;
    }

    /** True where it is as she could have written it here, as whatever comes from elsewhere must be. */
    public boolean isReadable() {
        return isNote(word)
                && measured().stream().allMatch(Measured::isReadable)
                && used.stream().allMatch(Use::isReadable);
    }
}
