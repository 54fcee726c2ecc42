/** How a cloth is made up: seam, hem, margins, the face with the fells. */
@NullMarked
package hearthcloth.cloth.making;

import org.jspecify.annotations.NullMarked;
