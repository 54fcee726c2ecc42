/** Colour as the eye sees it: sRGB, CIELAB, differences, contrast, plain names. Knows nothing of cloth. */
@NullMarked
package hearthcloth.colour;

import org.jspecify.annotations.NullMarked;
