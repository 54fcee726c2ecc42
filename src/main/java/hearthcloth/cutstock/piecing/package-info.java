/**
 * Free piecing: rectangular scraps sewn edge to edge into rectangular cloths of wished sizes, with little trimmed off. Pure
 * arithmetic on whole lengths in one unit; knows fabrics only as numbers and nothing of cloths, colours or stashes. The
 * method and how well it does: {@code docs/piecing.md}.
 */
@NullMarked
package hearthcloth.cutstock.piecing;

import org.jspecify.annotations.NullMarked;
