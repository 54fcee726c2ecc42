package hearthcloth.plan.cutjoin;

/**
 * What changes while lanes are opened and closed, in flat arrays so that copying is cheap. Levels are numbered {@code
 * plot * Lanes.MOST_LEVELS + level}; a slot whose lane has no width is free.
 */
final class LaneState {
    final int[] depth;
    final int[] lanes;
    final long[] gap;
    final long[] length;
    final boolean[] turned;
    final int[] lanePlace;
    final int[] laneLevel;
    final long[] laneWidth;
    int limit;

    LaneState(int plots, int slots) {
        depth = new int[plots];
        lanes = new int[plots * Lanes.MOST_LEVELS];
        gap = new long[plots * Lanes.MOST_LEVELS];
        length = new long[plots * Lanes.MOST_LEVELS];
        turned = new boolean[plots * Lanes.MOST_LEVELS];
        lanePlace = new int[slots];
        laneLevel = new int[slots];
        laneWidth = new long[slots];
    }

    void copy(LaneState other) {
        System.arraycopy(other.depth, 0, depth, 0, depth.length);
        System.arraycopy(other.lanes, 0, lanes, 0, lanes.length);
        System.arraycopy(other.gap, 0, gap, 0, gap.length);
        System.arraycopy(other.length, 0, length, 0, length.length);
        System.arraycopy(other.turned, 0, turned, 0, turned.length);
        int slots = Math.max(limit, other.limit);
        System.arraycopy(other.lanePlace, 0, lanePlace, 0, slots);
        System.arraycopy(other.laneLevel, 0, laneLevel, 0, slots);
        System.arraycopy(other.laneWidth, 0, laneWidth, 0, slots);
        limit = other.limit;
    }
}
