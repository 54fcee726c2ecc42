package hearthcloth.cutstock.piecing.blocks;

import hearthcloth.cutstock.piecing.tree.Pieced;
import java.util.function.Supplier;

/**
 * A rectangle made of scraps.
 *
 * @param scraps the set of scraps, as bits
 * @param width its net width, at most the goal's
 * @param height its net height, at most the goal's
 * @param lost the area that is lost
 * @param tree makes the tree, its patches still as large as their scraps and numbered as in the stock
 */
public record BlockCover(long scraps, int width, int height, long lost, Supplier<Pieced> tree) {}
