package hearthcloth.plan.colour;

import hearthcloth.colour.Colour;
import hearthcloth.plan.model.Contrast;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Seeded problems of 8 to 16 bars round a square hearth, three to six fabrics of one lightness, so that balance, which
 * no linear model has, is no matter; a fabric is scarce, and some bars cost a join or a hearth's edge in it.
 */
public final class ColourJob {

    private static final double JOIN = 2000;

    private final SplittableRandom chance;
    private final List<Tile> bars = new ArrayList<>();
    private final Tile hearth;
    private final int fabrics;

    private ColourJob(long seed) {
        this.chance = new SplittableRandom(seed);
        this.fabrics = 3 + chance.nextInt(4);
        double hearthMm = 100 + chance.nextInt(200);
        double left = 0;
        double top = 0;
        double right = hearthMm;
        double bottom = hearthMm;
        int count = 8 + chance.nextInt(9);
        for (int bar = 0; bar < count; bar++) {
            double width = 30 + chance.nextInt(60);
            switch (bar % 4) {
                case 0 -> bars.add(new Tile(bar + 1, 0, right, top, right += width, bottom));
                case 1 -> bars.add(new Tile(bar + 1, 0, left, bottom, right, bottom += width));
                case 2 -> bars.add(new Tile(bar + 1, 0, left - width, top, left, bottom));
                default -> bars.add(new Tile(bar + 1, 0, left, top - width, right, top));
            }
            left -= bar % 4 == 2 ? width : 0;
            top -= bar % 4 == 3 ? width : 0;
        }
        double x = left;
        double y = top;
        bars.replaceAll(tile -> moved(tile, -x, -y));
        this.hearth = moved(new Tile(0, fabrics, 0, 0, hearthMm, hearthMm), -x, -y);
    }

    private static Tile moved(Tile tile, double x, double y) {
        return new Tile(tile.bar(), tile.fabric(), tile.x() + x, tile.y() + y, tile.right() + x, tile.bottom() + y);
    }

    /** The problem of this seed. */
    static BarColouring of(long seed) {
        return new ColourJob(seed).problem();
    }

    private BarColouring problem() {
        List<Fabric> all = new ArrayList<>();
        for (int i = 0; i <= fabrics; i++) {
            all.add(new Fabric("F" + i, level(), Fabric.Faces.SAME, Fabric.Nap.ANY));
        }
        int[] numbers = new int[fabrics];
        double[] room = new double[fabrics];
        double need = bars.stream().mapToDouble(Tile::areaMm2).sum();
        double[][] before = new double[bars.size()][fabrics];
        for (int fabric = 0; fabric < fabrics; fabric++) {
            numbers[fabric] = fabric;
            room[fabric] = need / fabrics * (1.1 + chance.nextDouble());
            for (int bar = 0; bar < bars.size(); bar++) {
                before[bar][fabric] = chance.nextInt(5) == 0 ? JOIN : chance.nextInt(4) == 0 ? 300 : 0;
            }
        }
        EdgeBill bill = new EdgeBill(new FabricDifferences(all), Contrast.MOST, Optional.empty());
        return new BarColouring(hearth, bars, bill, numbers, before, room);
    }

    /** A colour of L* near 60, found by trying. */
    private Colour level() {
        while (true) {
            Colour colour = Colour.of(chance.nextInt(0x1000000));
            if (Math.abs(colour.lab().lightness() - 60) < 0.5) {
                return colour;
            }
        }
    }
}
