/**
 * Cutting blocks and bars out of rectangles of fabric by straight edge-to-edge cuts, and joining bars from parts. Pure
 * arithmetic on whole lengths in one unit; knows fabrics only as numbers and nothing of cloths, colours or stashes.
 */
@NullMarked
package hearthcloth.plan.cutjoin;

import org.jspecify.annotations.NullMarked;
