/** The reference sheet: what may be it, which it is, and what its corners make of pixels. */
@NullMarked
package hearthcloth.photo.scale;

import org.jspecify.annotations.NullMarked;
