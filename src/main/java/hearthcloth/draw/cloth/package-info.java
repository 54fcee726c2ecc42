/** Drawings of the flat cloth, its seams, its hem and the pieces on the mat. */
@NullMarked
package hearthcloth.draw.cloth;

import org.jspecify.annotations.NullMarked;
