package hearthcloth.benchmarks.sets;

import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Seeded stashes of any number of pieces. */
public final class Stashes {

    private static final int MOST_FABRICS = 12;

    private Stashes() {}

    /**
     * Nine in ten are scraps of 3 to 12 by 6 to 24 in, one in ten is a cut of 18 by 22 in, all in eighths; up to twelve
     * fabrics, a third of them with a right side, a quarter with a nap.
     */
    public static Stash of(int pieces, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Fabric> fabrics = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST_FABRICS, 1 + pieces / 5); i++) {
            fabrics.add(new Fabric(
                    "Cloth " + (i + 1),
                    Colour.of(chance.nextInt(1 << 24)),
                    chance.nextInt(3) == 0 ? Fabric.Faces.RIGHT : Fabric.Faces.SAME,
                    chance.nextInt(4) == 0 ? Fabric.Nap.LENGTHWISE : Fabric.Nap.ANY));
        }
        List<Piece> all = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            Size size = i % 10 == 0
                    ? new Size(Length.inches(18), Length.inches(22))
                    : new Size(Length.inches(24 + chance.nextInt(73), 8), Length.inches(48 + chance.nextInt(145), 8));
            Fabric fabric = fabrics.get(chance.nextInt(fabrics.size()));
            all.add(new Piece(String.valueOf(i + 2), fabric, size, Piece.Washed.UNKNOWN, i + 2));
        }
        return new Stash(all);
    }
}
