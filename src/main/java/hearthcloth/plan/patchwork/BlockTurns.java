package hearthcloth.plan.patchwork;

import hearthcloth.cloth.Side;
import hearthcloth.cutstock.piecing.cabin.Cabin.Edge;
import hearthcloth.cutstock.piecing.cabin.Cabin.Log;
import hearthcloth.cutstock.piecing.cabin.Cabin.Tone;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** How each block of a setting is turned, and so on which edges its light and dark bars lie. */
final class BlockTurns {

    private final Blocks blocks;
    private final Setting setting;
    private final long seed;

    BlockTurns(Blocks blocks, Setting setting, long seed) {
        this.blocks = blocks;
        this.setting = setting;
        this.seed = seed;
    }

    /** Quarter turns, with the clock, of the block in this row and column; unturned its light half is at the lower right. */
    int turns(int row, int column) {
        return switch (setting) {
            case ALIKE -> 0;
            case STRAIGHT_FURROW -> (row + column) % 2 == 0 ? 0 : 2;
            case SUNSHINE_AND_SHADOW -> towards(row % 2 == 0, column % 2 == 0);
            case BARN_RAISING -> raised(row, column);
            case TURNED_AT_WILL -> new SplittableRandom(seed * 1_000 + row * 31L + column).nextInt(4);
        };
    }

    /** The turns with which the light half points down or up, and right or left. */
    private static int towards(boolean down, boolean right) {
        if (down) {
            return right ? 0 : 1;
        }
        return right ? 3 : 2;
    }

    private int raised(int row, int column) {
        int middleRow = (blocks.down() + 1) / 2;
        int middleColumn = (blocks.across() + 1) / 2;
        boolean above = row < middleRow;
        boolean left = column < middleColumn;
        int ring = (above ? middleRow - 1 - row : row - middleRow)
                + (left ? middleColumn - 1 - column : column - middleColumn);
        int inwards = towards(above, left);
        return ring % 2 == 0 ? inwards : (inwards + 2) % 4;
    }

    /** The bars of that block, the innermost first; light ones first in every round. */
    List<Log> bars(int row, int column, boolean toned) {
        List<Log> bars = new ArrayList<>();
        List<Side> sides = blocks.order().sides();
        int turns = turns(row, column);
        for (int round = 0; round < blocks.rounds(); round++) {
            for (int i = 0; i < sides.size(); i++) {
                boolean light = sides.size() == 2 ? round % 2 == 0 : i < sides.size() / 2;
                Tone tone = light ? Tone.LIGHT : Tone.DARK;
                bars.add(new Log(turned(sides.get(i), turns), toned ? tone : Tone.ANY));
            }
        }
        return bars;
    }

    private static Edge turned(Side side, int turns) {
        Edge edge = Edge.valueOf(side.name());
        for (int i = 0; i < turns; i++) {
            edge = edge.turned();
        }
        return edge;
    }
}
