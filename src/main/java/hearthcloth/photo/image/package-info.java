/** Pixels: decoding, CIELAB, masks, the lens, white balance. Knows nothing of fabric. */
@NullMarked
package hearthcloth.photo.image;

import org.jspecify.annotations.NullMarked;
