package hearthcloth.photo.scene;

/** What the scraps lie on. */
record Floor(Kind kind, Paint paint, long seed) {

    enum Kind {
        PLAIN,
        WOOD,
        CARPET,
        /** Plain, with squares and frames of two other colours all over. */
        RUG,
        /** A cutting mat with a grid, and the table beyond its edge. */
        MAT,
        /** Short boards that differ in tint, laid in a zigzag, with dark joints. */
        HERRINGBONE,
        /** Veined tiles with pale joints. */
        TILES,
        /** Stone chips of many colours. */
        CHIPS,
        /** Cloth with folds across the picture. */
        CREASED
    }

    private static final double PLANK_MM = 118;

    private static final double MOTIF_MM = 62;
    private static final Paint FRAME = Paint.srgb(0xd8b8a8);
    private static final Paint SQUARE = Paint.srgb(0x1f2d20);
    private static final Paint TABLE = Paint.srgb(0xa8794a);
    private static final Paint GRID = Paint.srgb(0xc8d8cc);
    private static final double EDGE_MM = 230;

    Paint at(double x, double y) {
        return coloured(x, y)
                .times(
                        switch (kind) {
                            case RUG -> 1 + 0.06 * Noise.smooth(seed, x / 2, y / 2);
                            case MAT -> isBeyond(x, y) ? 1 + 0.05 * Noise.smooth(seed, x / 90, y / 3) : 1;
                            case PLAIN -> 1 + 0.02 * Noise.smooth(seed, x / 90, y / 90);
                            case WOOD -> wood(x, y);
                            case CARPET -> carpet(x, y);
                            case HERRINGBONE, TILES, CHIPS, CREASED -> GroundTextures.light(kind, seed, x, y);
                        });
    }

    /** The plain colour there, without figures. */
    Paint ground(double x, double y) {
        return isBeyond(x, y) ? TABLE : paint;
    }

    private Paint coloured(double x, double y) {
        return switch (kind) {
            case PLAIN, WOOD, CARPET, HERRINGBONE, CREASED -> paint;
            case TILES, CHIPS -> GroundTextures.coloured(kind, seed, paint, x, y);
            case RUG -> figured(0.94 * x - 0.34 * y, 0.34 * x + 0.94 * y);
            case MAT ->
                isBeyond(x, y) ? TABLE : isGrid(0.98 * x + 0.2 * y) || isGrid(0.98 * y - 0.2 * x) ? GRID : paint;
        };
    }

    private Paint figured(double x, double y) {
        long column = (long) Math.floor(x / MOTIF_MM);
        long row = (long) Math.floor(y / MOTIF_MM);
        double off = Math.max(Math.abs(x / MOTIF_MM - column - 0.5), Math.abs(y / MOTIF_MM - row - 0.5)) * MOTIF_MM;
        if (Math.floorMod(column + row, 2) == 0) {
            return off < 7 ? SQUARE : paint;
        }
        return off < 7 ? SQUARE : off < 10 ? FRAME : paint;
    }

    private static boolean isGrid(double mm) {
        return mm - 10 * Math.floor(mm / 10) < 0.5;
    }

    private boolean isBeyond(double x, double y) {
        return kind == Kind.MAT && 0.98 * x + 0.2 * y > EDGE_MM;
    }

    private double wood(double x, double y) {
        long plank = (long) Math.floor(y / PLANK_MM);
        double across = y - plank * PLANK_MM;
        double end = x + 400 * Noise.at(seed + 7, plank, 0);
        double along = end - 900 * Math.floor(end / 900);
        if (across < 1.6 || along < 1.2) {
            return 0.45;
        }
        double board = 0.09 * Noise.at(seed, plank, (long) Math.floor(end / 900));
        double wave = 4 * Noise.smooth(seed + 3, x / 160, (double) plank);
        double grain = 0.09 * Noise.smooth(seed + plank, x / 120, (across + wave) / 5)
                + 0.06 * Noise.smooth(seed + 50 + plank, x / 60, (across + wave) / 1.7);
        return 1 + board + grain;
    }

    private double carpet(double x, double y) {
        return 1
                + 0.20 * Noise.smooth(seed, x / 2.2, y / 2.2)
                + 0.10 * Noise.smooth(seed + 1, x / 5, y / 5)
                + 0.05 * Noise.smooth(seed + 2, x / 60, y / 60);
    }
}
