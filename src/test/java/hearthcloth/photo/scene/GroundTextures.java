package hearthcloth.photo.scene;

/** What floors and tables look like that are hard to read on: boards in a zigzag, tiles, stone chips, folds. */
final class GroundTextures {

    private static final double BOARD_MM = 70;
    /** Boards are five times as long as wide. */
    private static final int LONG = 5;

    private static final double TILE_MM = 300;
    private static final double JOINT_MM = 4;
    private static final Paint GROUT = Paint.srgb(0xd6d0c4);
    private static final Paint[] CHIPS = {
        Paint.srgb(0x3a3733), Paint.srgb(0xe8e2d6), Paint.srgb(0x8c5b44), Paint.srgb(0x6d7a72)
    };

    private GroundTextures() {}

    /** How light a place is beside the ground's mean. */
    static double light(Floor.Kind kind, long seed, double x, double y) {
        return switch (kind) {
            case HERRINGBONE -> herringbone(seed, 0.8 * x - 0.6 * y, 0.6 * x + 0.8 * y);
            case TILES -> tile(seed, 0.96 * x - 0.28 * y, 0.28 * x + 0.96 * y);
            case CREASED -> creased(seed, x, y);
            default -> 1 + 0.03 * Noise.smooth(seed, x / 80, y / 80);
        };
    }

    /** The colour of a place where it is not the ground's own. */
    static Paint coloured(Floor.Kind kind, long seed, Paint paint, double x, double y) {
        if (kind == Floor.Kind.TILES) {
            return isJoint(0.96 * x - 0.28 * y) || isJoint(0.28 * x + 0.96 * y) ? GROUT : paint;
        }
        double size = 9;
        long column = (long) Math.floor(x / size);
        long row = (long) Math.floor(y / size);
        double middleX = (column + 0.5 + 0.3 * Noise.at(seed, column, row)) * size;
        double middleY = (row + 0.5 + 0.3 * Noise.at(seed + 1, column, row)) * size;
        double wide = size * (0.2 + 0.25 * Math.abs(Noise.at(seed + 2, column, row)));
        int which = (int) (Math.abs(Noise.at(seed + 3, column, row)) * 3.99);
        return Math.hypot(x - middleX, y - middleY) < wide ? CHIPS[which] : paint;
    }

    private static boolean isJoint(double at) {
        return at - TILE_MM * Math.floor(at / TILE_MM) < JOINT_MM;
    }

    /** In cells as wide as a board: along each diagonal lie {@code LONG} cells across, then as many down. */
    private static double herringbone(long seed, double u, double v) {
        long column = (long) Math.floor(u / BOARD_MM);
        long row = (long) Math.floor(v / BOARD_MM);
        long at = Math.floorMod(column + row, 2L * LONG);
        boolean lies = at < LONG;
        double along = lies ? u - (column - at) * BOARD_MM : v - (row - (at - LONG)) * BOARD_MM;
        double across = lies ? v - row * BOARD_MM : u - column * BOARD_MM;
        if (across < 1 || along < 1) {
            return 0.5;
        }
        long board = lies ? 31 * (column - at) + row : 7919 + 17 * (row - (at - LONG)) + 3 * column;
        double grain = 0.08 * Noise.smooth(seed + board, along / 90, across / 4)
                + 0.05 * Noise.smooth(seed + 9 + board, along / 40, across / 1.5);
        return 1 + 0.16 * Noise.at(seed, board, 5) + grain;
    }

    private static double tile(long seed, double u, double v) {
        double bent = v + 60 * Noise.smooth(seed + 4, u / 110, v / 110);
        double vein = Math.exp(-Math.pow(Noise.smooth(seed + 5, u / 70, bent / 70) / 0.06, 2));
        return 1 - 0.18 * vein + 0.06 * Noise.smooth(seed, u / 200, v / 200);
    }

    /** Each fold is a ridge with a light flank and a dark one, straight and right across. */
    private static double creased(long seed, double x, double y) {
        double light = 1 + 0.03 * Noise.smooth(seed, x / 120, y / 120);
        for (int fold = 0; fold < 6; fold++) {
            double turn = Math.PI * Noise.at(seed, fold, 1);
            double off = x * Math.cos(turn) + y * Math.sin(turn) - 500 * Noise.at(seed, fold, 2);
            double wide = 5 + 7 * Math.abs(Noise.at(seed, fold, 3));
            light += 0.3 * Noise.at(seed, fold, 4) * off / wide * Math.exp(-off * off / (2 * wide * wide));
        }
        return light;
    }
}
