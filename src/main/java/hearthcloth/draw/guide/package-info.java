/** Blocks and pages of the printed guide. */
@NullMarked
package hearthcloth.draw.guide;

import org.jspecify.annotations.NullMarked;
