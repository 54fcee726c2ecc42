/**
 * Piecing bars end to end from strips of their own width with the fewest joins, and proofs of how few are possible.
 * Pure arithmetic on whole lengths in one unit; where strips come from is left to whoever supplies them.
 */
@NullMarked
package hearthcloth.plan.join;

import org.jspecify.annotations.NullMarked;
