package hearthcloth.photo.heldaside;

import java.util.Random;

/** Makes grounds out of seeds. Sizes of boards, tiles and grids are those of ordinary houses, common practice, no source. */
final class Grounds {

    private static final int[] WOODS = {0xb98a5a, 0x8a5a36, 0xd2b48c, 0x5d3d28, 0xa47148, 0xc9a06a};
    private static final int[] CARPETS = {0x8d857a, 0x5b6168, 0x7a3b34, 0xb9ad98, 0x3f4a5c, 0x66705a};
    private static final int[] TILES = {0xb9b2a6, 0xd8d2c4, 0x8f8a86, 0xa06a4c, 0x5a5d60, 0xc8bfae};
    private static final int[] TABLES = {0xe9e4da, 0x3b3532, 0xa7a39c, 0x7d6a58, 0x4a5a64, 0xc8b79a};
    private static final int[] SHEETS = {0xe8e6e0, 0xc6d2de, 0xd9c7c0, 0x8fa3b5, 0xb9c4ae, 0x5c6b82};
    private static final int[] MATS = {0x2f6b4f, 0x2b4a6b, 0x55585c, 0x6a3f5c};

    private Grounds() {}

    static Surface of(GroundKind kind, Random chance) {
        int seed = chance.nextInt();
        return plain(kind, seed, chance).laid(-5003, -7001, chance.nextDouble() * Math.PI);
    }

    private static Surface plain(GroundKind kind, int seed, Random chance) {
        return switch (kind) {
            case WOOD ->
                new Boards(seed, one(WOODS, chance), 70 + 100 * chance.nextDouble(), 0.5 + chance.nextDouble());
            case CARPET -> new Pile(seed, one(CARPETS, chance), 2 + 3 * chance.nextDouble());
            case TILES ->
                new Joints(seed, one(TILES, chance), 150 + 200 * chance.nextDouble(), 2 + 4 * chance.nextDouble());
            case CONCRETE -> new Floated(seed, Tint.of(0x9a9790).mixed(Tint.of(0x7f7c78), chance.nextDouble()));
            case TABLE -> new Board(seed, one(TABLES, chance), chance.nextInt(3) == 0 ? 0.06 : 0.015);
            case BEDSHEET -> new Linen(seed, one(SHEETS, chance), 0.05 + 0.07 * chance.nextDouble());
            case MAT -> new Gridded(one(MATS, chance), seed, chance.nextBoolean() ? 10 : 25.4);
        };
    }

    /** A mat as a thing of its own, its corner at the origin, of a colour far from {@code ground}. */
    static Surface mat(Tint ground, Random chance) {
        int from = chance.nextInt(MATS.length);
        Tint best = Tint.of(MATS[from]);
        for (int i = 1; i < MATS.length; i++) {
            Tint other = Tint.of(MATS[(from + i) % MATS.length]);
            best = best.difference(ground) < 25 && other.difference(ground) > best.difference(ground) ? other : best;
        }
        return new Gridded(best, chance.nextInt(), chance.nextBoolean() ? 10 : 25.4);
    }

    private static Tint one(int[] colours, Random chance) {
        double b = 0.85 + 0.3 * chance.nextDouble();
        return Tint.of(colours[chance.nextInt(colours.length)])
                .times(b * (0.97 + 0.06 * chance.nextDouble()), b, b * (0.97 + 0.06 * chance.nextDouble()));
    }

    /** Boards with grain along x, gaps between, and butt ends. */
    private record Boards(int seed, Tint tint, double width, double gap) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double row = Math.floor(y / width);
            double own = Grain.share(seed, (long) row, 0);
            double length = 700 + 500 * Grain.share(seed, (long) row, 1);
            double along = x + 3000 * own;
            double end = Math.floor(along / length);
            double shade = Grain.share(seed, (long) row, (long) end + 7);
            double in = y - row * width;
            double bow = in + 9 * Grain.smooth(seed + (int) row, along / 260, in / 90);
            int mine = seed + 31 * (int) row + 57 * (int) end;
            double rings = Math.sin(bow * (0.5 + 0.5 * shade) + 5 * Grain.smooth(mine, along / 400, in / 60));
            double fibre = Grain.smooth(mine + 1, along / 45, in / 0.9) * Grain.seenShare(1.4, footprint);
            double pores =
                    Math.max(0, Grain.smooth(mine + 2, along / 9, in / 0.45) - 0.25) * Grain.seenShare(0.8, footprint);
            double broad = Grain.smooth(mine + 3, along / 300, in / 25);
            double knot = knot(mine, along - end * length, in, length);
            double b = (0.82 + 0.34 * shade) * (1 + 0.07 * rings + 0.07 * fibre + 0.08 * broad - 0.35 * pores) * knot;
            double side = Math.min(in, width - in) - gap / 2;
            double butt = Math.min(along - end * length, (end + 1) * length - along) - gap / 3;
            double open = Math.min(Grain.cover(side, footprint), Grain.cover(butt, footprint));
            double worn = 0.86 + 0.14 * Grain.step(0, 1.6, side);
            out[0] = tint.red() * b * worn * (0.12 + 0.88 * open);
            out[1] = tint.green() * b * worn * (0.10 + 0.90 * open) * (1 - 0.03 * rings);
            out[2] = tint.blue() * b * worn * (0.09 + 0.91 * open) * (1 - 0.06 * rings - 0.05 * broad);
        }

        private double knot(int mine, double along, double in, double length) {
            if (Grain.share(mine, 3, 3) > 0.25) {
                return 1;
            }
            double dx = along - length * (0.2 + 0.6 * Grain.share(mine, 4, 4));
            double dy = in - width * (0.25 + 0.5 * Grain.share(mine, 5, 5));
            double r = Math.sqrt(dx * dx / 2.2 + dy * dy) + 1.2 * Grain.smooth(mine + 9, dx / 4, dy / 4);
            return 1
                    - 0.5 * (1 - Grain.step(4, 9, r))
                    - 0.12 * (1 - Grain.step(8, 22, r)) * (0.5 + 0.5 * Math.sin(r * 1.6));
        }
    }

    /** Tufts, each a little lighter in its middle. */
    private record Pile(int seed, Tint tint, double tuft) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double px = x / tuft + 0.35 * Grain.smooth(seed, x / 6, y / 6);
            double py = y / tuft + 0.35 * Grain.smooth(seed + 1, x / 6, y / 6);
            long i = (long) Math.floor(px);
            long j = (long) Math.floor(py);
            double u = px - i - 0.5;
            double v = py - j - 0.5;
            double seen = Grain.seenShare(tuft, footprint);
            double mound = seen * (0.28 - 1.15 * (u * u + v * v));
            double own = seen * (Grain.share(seed, i, j) - 0.5);
            double fuzz = Grain.seen(seed + 2, x, y, 1.1, footprint);
            double trodden = Grain.smooth(seed + 3, x / 110, y / 70);
            double b = 1 + mound + 0.35 * own + 0.16 * fuzz + 0.09 * trodden;
            double warm = 0.05 * own;
            out[0] = Math.max(0.01, tint.red() * (b + warm));
            out[1] = Math.max(0.01, tint.green() * b);
            out[2] = Math.max(0.01, tint.blue() * (b - warm));
        }
    }

    /** Square tiles with joints a little below them. */
    private record Joints(int seed, Tint tint, double side, double joint) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double i = Math.floor(x / side);
            double j = Math.floor(y / side);
            double u = x - i * side;
            double v = y - j * side;
            double in = Math.min(Math.min(u, side - u), Math.min(v, side - v))
                    - joint / 2
                    + 0.25 * Grain.smooth(seed + 5, x / 12, y / 12);
            double own = 0.95 + 0.1 * Grain.share(seed, (long) i, (long) j);
            int mine = seed + 13 * (int) i + 29 * (int) j;
            double cloud = Grain.rough(mine, x, y, 70, 4, footprint);
            double speck = Grain.seen(seed + 6, x, y, 2.2, footprint);
            double b = own * (1 + 0.10 * cloud + 0.03 * speck) * (0.88 + 0.12 * Grain.step(0, 2.5, in));
            double open = Grain.cover(in, footprint);
            double grout = 0.36 * (1 + 0.2 * Grain.rough(seed + 7, x, y, 9, 3, footprint));
            out[0] = open * tint.red() * b + (1 - open) * grout;
            out[1] = open * tint.green() * b * (1 - 0.03 * cloud) + (1 - open) * grout * 0.96;
            out[2] = open * tint.blue() * b * (1 - 0.06 * cloud) + (1 - open) * grout * 0.9;
        }
    }

    /** A floated cement floor: clouds, trowel sweeps, pits. */
    private record Floated(int seed, Tint tint) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double cloud = Grain.rough(seed, x, y, 260, 5, footprint);
            double sand = Grain.seen(seed + 1, x, y, 1.3, footprint) + 0.6 * Grain.seen(seed + 2, x, y, 0.7, footprint);
            double sweep = Grain.smooth(seed + 3, (x + 0.4 * y) / 140, (y - 0.4 * x) / 14);
            double pits = Grain.step(0.55, 0.75, Grain.seen(seed + 4, x, y, 3.2, footprint));
            double b = 1 + 0.16 * cloud + 0.05 * sand + 0.05 * sweep - 0.4 * pits;
            tint.into(out, Math.max(0.05, b));
            out[2] *= 1 - 0.05 * cloud;
        }
    }

    /** A laminate top: nearly plain. */
    private record Board(int seed, Tint tint, double liveliness) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double b = 1
                    + liveliness * Grain.smooth(seed, x / 180, y / 3.5) * Grain.seenShare(4, footprint)
                    + liveliness * Grain.smooth(seed + 1, x / 70, y / 70)
                    + 0.015 * Grain.seen(seed + 2, x, y, 0.8, footprint);
            tint.into(out, b);
        }
    }

    /** A sheet on a bed: weave and rumples, lit from one side. */
    private record Linen(int seed, Tint tint, double rumple) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double fold = rumple(x + 2, y + 1) - rumple(x - 2, y - 1);
            double thread = Fabric.thread(seed, x, y, 0.35, 0.10, footprint);
            tint.into(out, Math.max(0.1, 1 + rumple * 3 * fold + thread));
        }

        private double rumple(double x, double y) {
            double broad = Grain.smooth(seed, x / 150, y / 110);
            double ridge = 1 - Math.abs(Grain.smooth(seed + 1, x / 150 + 0.4 * broad, y / 240));
            double small = 1 - Math.abs(Grain.smooth(seed + 2, x / 60 + 0.5 * broad, y / 85));
            return 6 * broad + 6 * ridge * ridge * ridge + small * small;
        }
    }

    /** A cutting mat: thin lines every step, bold every fifth, scars of the blade. */
    private record Gridded(Tint tint, int seed, double step) implements Surface {
        @Override
        public void colour(double x, double y, double footprint, double[] out) {
            double cloud = Grain.rough(seed, x, y, 90, 3, footprint);
            tint.into(out, 1 + 0.05 * cloud + 0.04 * Grain.seen(seed + 1, x, y, 0.9, footprint));
            double thin = Math.max(line(x, step, 0.35, footprint), line(y, step, 0.35, footprint));
            double bold = Math.max(line(x, step * 5, 0.9, footprint), line(y, step * 5, 0.9, footprint));
            double slant = line((x + y) / Math.sqrt(2), step * 20, 0.5, footprint);
            double ink = Math.max(0.45 * thin, Math.max(0.75 * bold, 0.6 * slant));
            Tint.of(0xdfe3cf).over(out, ink);
            double scar =
                    line(x * 0.94 + y * 0.34 + 3 * Grain.smooth(seed + 2, x / 400, y / 400), 173, 0.25, footprint);
            Tint.of(0x202020).over(out, 0.25 * scar * Grain.step(0.1, 0.5, Grain.smooth(seed + 3, x / 120, y / 120)));
        }

        private static double line(double at, double every, double wide, double footprint) {
            double off = Math.abs(at - every * Math.rint(at / every));
            return Math.min(Grain.cover(wide / 2 - off, footprint), wide / Math.max(wide, footprint));
        }
    }
}
