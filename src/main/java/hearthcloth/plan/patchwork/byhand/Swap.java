package hearthcloth.plan.patchwork.byhand;

/**
 * Another scrap that could lie where one lies.
 *
 * @param scrap the one that is there
 * @param other the one that comes; where it lies on the table too, the two change places
 * @param trimmed how much more area is trimmed off then than now, in square marks; below nothing where it is less
 */
public record Swap(int scrap, int other, long trimmed) {}
