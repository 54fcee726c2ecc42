package hearthcloth.cutstock.piecing.tree;

/**
 * Two things of equal edge sewn together.
 *
 * @param beside whether the second lies to the right of the first; below it otherwise
 */
public record Joint(boolean beside, Pieced first, Pieced second) implements Pieced {}
