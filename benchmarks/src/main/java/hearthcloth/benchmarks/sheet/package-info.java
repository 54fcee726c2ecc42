/**
 * The best value out of one rectangle by straight edge-to-edge cuts, with proofs of how much more there could be. Pure
 * arithmetic on whole lengths in one unit; what a piece is worth is the caller's affair.
 */
@NullMarked
package hearthcloth.benchmarks.sheet;

import org.jspecify.annotations.NullMarked;
