package hearthcloth.photo.heldaside;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** A maker's few fabrics, mostly such as can be told from the ground. */
final class Fabrics {

    private static final int[] DYES = {
        0x9e2b25, 0xc8553d, 0xd9a441, 0x6b7f3a, 0x2f5d50, 0x1f4e79, 0x274060, 0x6a4c93, 0xb56576, 0xe56b6f, 0xf2e8cf,
                0xeae0d5,
        0x8d99ae, 0x2b2d42, 0x3d2c2e, 0x7f5539, 0xddb892, 0xa3b18a, 0x588157, 0x87bba2, 0xc9e4ca, 0xf4a261, 0xe9c46a,
                0x264653,
        0x202020, 0xf7f5ef, 0xb8c0c8, 0xf1c0c8, 0xcdb4db, 0xa2d2ff, 0x6d597a, 0x355070
    };

    private Fabrics() {}

    /** @param near how many of a hundred may be hard to tell from the ground */
    static List<Fabric> some(int count, Tint ground, int near, Random chance) {
        List<Fabric> all = new ArrayList<>();
        while (all.size() < count) {
            Fabric one = any(chance, chance.nextInt(100) < near && near > 20 ? ground : null);
            Surface face = one::colour;
            if (face.mean(0, 0, 60).difference(ground) >= 14 || chance.nextInt(100) < near) {
                all.add(one);
            }
        }
        return List.copyOf(all);
    }

    private static Fabric any(Random chance, @Nullable Tint like) {
        double d = chance.nextDouble();
        Fabric.Look look = d < 0.4
                ? Fabric.Look.PLAIN
                : d < 0.56
                        ? Fabric.Look.STRIPED
                        : d < 0.7 ? Fabric.Look.CHECKED : d < 0.84 ? Fabric.Look.DOTTED : Fabric.Look.FLOWERED;
        double size = switch (look) {
            case PLAIN -> 1;
            case STRIPED -> 4 + 18 * chance.nextDouble();
            case CHECKED -> 5 + 15 * chance.nextDouble();
            case DOTTED -> 5 + 13 * chance.nextDouble();
            case FLOWERED -> 16 + 26 * chance.nextDouble();
        };
        double share = 0.8 + 0.4 * chance.nextDouble();
        Tint base = like == null ? dye(chance) : like.times(share, share * (0.96 + 0.08 * chance.nextDouble()), share);
        List<Tint> tints = new ArrayList<>(List.of(base));
        while (tints.size() < 3) {
            Tint next = dye(chance);
            if (next.difference(base) > 18) {
                tints.add(next);
            }
        }
        if (look != Fabric.Look.FLOWERED && chance.nextBoolean()) {
            tints.remove(2);
        }
        return new Fabric(look, size, 0.3 + 0.35 * chance.nextDouble(), chance.nextInt(), tints);
    }

    private static Tint dye(Random chance) {
        double b = 0.88 + 0.14 * chance.nextDouble();
        return Tint.of(DYES[chance.nextInt(DYES.length)]).times(b, b, b);
    }
}
