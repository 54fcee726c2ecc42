package hearthcloth.stash;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StashFileWritingTest {

    private static StashFile.Read read(String text) {
        StashFile.Reading reading = StashFile.read(text, Optional.empty());
        assertThat(reading).isInstanceOf(StashFile.Read.class);
        return (StashFile.Read) reading;
    }

    @Test
    void reads_back_as_the_same_stash_whatever_the_names_hold() {
        for (long seed = 1; seed <= 300; seed++) {
            Stash stash = stash(new Random(seed));
            for (Ruler ruler : Ruler.values()) {
                String text = StashFile.write(stash, ruler, Map.of());
                assertThat(read(text).stash()).as("seed %d", seed).isEqualTo(stash);
            }
        }
    }

    @Test
    void nothing_in_it_runs_as_a_formula() {
        for (String name : List.of("=cmd|' /C calc'!A0", "+1", "-1", "@SUM(A1)", "'=1", "''=1")) {
            Fabric fabric = new Fabric(name, Colour.of(0x112233), Fabric.Faces.SAME, Fabric.Nap.ANY);
            Piece piece = new Piece("2", fabric, Size.square(Length.inches(4)), Piece.Washed.UNKNOWN, 2);
            String text = StashFile.write(
                    new Stash(List.of(piece)), Ruler.EIGHTHS, Map.of(2, Map.of("note", "=HYPERLINK(1)")));
            assertThat(text.lines().skip(1)).allSatisfy(line -> {
                assertThat(line).startsWith("'");
                assertThat(line).contains(",'=HYPERLINK(1)");
            });
            assertThat(read(text).stash().pieces()).containsExactly(piece);
            assertThat(read(text).kept()).isEqualTo(Map.of(2, Map.of("note", "=HYPERLINK(1)")));
        }
    }

    private static Stash stash(Random random) {
        String[] names = {
            "kelp", "<script>alert(1)</script>", "say \"fog\"", "a,b;c", "=1+1", "'=x", "-", "@at", "Ünïcode 布", "' "
        };
        List<Piece> pieces = new ArrayList<>();
        int lines = 1 + random.nextInt(8);
        for (int line = 2; line < lines + 2; line++) {
            int kind = random.nextInt(names.length);
            Fabric fabric = new Fabric(
                    names[kind].strip(),
                    Colour.of(kind * 4321),
                    kind % 2 == 0 ? Fabric.Faces.SAME : Fabric.Faces.RIGHT,
                    kind % 3 == 0 ? Fabric.Nap.ANY : Fabric.Nap.LENGTHWISE);
            Size size = new Size(
                    new Length(1 + random.nextInt(1_000_000_000)),
                    Length.inches(1 + random.nextInt(300), 1 << random.nextInt(7)));
            Piece.Washed washed = List.of(Piece.Washed.values()).get(random.nextInt(3));
            int count = 1 + random.nextInt(3);
            for (int n = 1; n <= count; n++) {
                pieces.add(new Piece(count == 1 ? "" + line : line + "-" + n, fabric, size, washed, line));
            }
        }
        return new Stash(pieces);
    }
}
