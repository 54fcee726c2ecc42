package hearthcloth.plan.propose;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Stashes for tests: given ones and seeded random ones. */
public final class Stashes {

    private static final String[] NAMES = {"Oat", "Kelp", "Slate", "Rust", "Shell", "Moss", "Dusk"};
    private static final int[] COLOURS = {0xd9c7a0, 0x3f5d52, 0x27344d, 0xa6502f, 0xeee6da, 0x6f7d4a, 0x50445e};

    private Stashes() {}

    public static Fabric fabric(int i, Fabric.Faces faces, Fabric.Nap nap) {
        return new Fabric(NAMES[i], Colour.of(COLOURS[i]), faces, nap);
    }

    public static Piece piece(int row, Fabric fabric, Size size) {
        return new Piece(String.valueOf(row), fabric, size, Piece.Washed.UNKNOWN, row);
    }

    /** Two lengths of yardage: a quarter and three quarters of a yard, 42 in wide. */
    public static Stash yardage() {
        Fabric slate = fabric(2, Fabric.Faces.SAME, Fabric.Nap.ANY);
        Fabric oat = fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        return new Stash(List.of(
                piece(2, slate, new Size(Length.inches(42), Length.inches(27))),
                piece(3, oat, new Size(Length.inches(42), Length.inches(54)))));
    }

    /** {@code count} odd scraps, 3 to 12 in wide and 6 to 24 in long, in eighths. */
    public static Stash scraps(int count, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int kind = random.nextInt(5);
            Fabric fabric = fabric(
                    kind,
                    kind % 2 == 0 ? Fabric.Faces.SAME : Fabric.Faces.RIGHT,
                    kind == 3 ? Fabric.Nap.LENGTHWISE : Fabric.Nap.ANY);
            Size size = new Size(Length.inches(24 + random.nextInt(73), 8), Length.inches(48 + random.nextInt(145), 8));
            pieces.add(piece(i + 2, fabric, size));
        }
        for (int kind = 0; kind < 5; kind++) {
            Fabric fabric = fabric(
                    kind,
                    kind % 2 == 0 ? Fabric.Faces.SAME : Fabric.Faces.RIGHT,
                    kind == 3 ? Fabric.Nap.LENGTHWISE : Fabric.Nap.ANY);
            pieces.add(piece(count + kind + 2, fabric, new Size(Length.inches(16), Length.inches(18))));
        }
        return new Stash(pieces);
    }
}
