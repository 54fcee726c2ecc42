/**
 * Rectangles put together out of scraps, best first: the engine of free piecing. Works in net lengths (what is left of a
 * cut length when one seam is taken off), which add up exactly; knows nothing but rectangles.
 */
@NullMarked
package hearthcloth.cutstock.piecing.blocks;

import org.jspecify.annotations.NullMarked;
