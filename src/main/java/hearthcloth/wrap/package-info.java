/**
 * Gift and cloth: which size ties round what, by following the cloth over the object. Pure arithmetic; draws nothing.
 *
 * <p>Inside, lengths are real millimetres, since every rule has a root or a circle in it; cloth sizes leave rounded up
 * and gifts rounded down, to whole nanometres. Letters used in the derivations (docs/sources.md#two-derivations): S is
 * the side of a square cloth, d = S/√2 its half diagonal, t what a corner needs for knot and tail; l × w × h is a box
 * with its long side l on the left–right diagonal; r is a radius.
 */
@NullMarked
package hearthcloth.wrap;

import org.jspecify.annotations.NullMarked;
