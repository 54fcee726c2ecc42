/** Cloths drawn on the screen: to look at, and to work on. */
@NullMarked
package hearthcloth.web.drawn;

import org.jspecify.annotations.NullMarked;
