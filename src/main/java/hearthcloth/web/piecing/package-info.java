/** Scraps put together by hand on the screen, piece by piece. */
@NullMarked
package hearthcloth.web.piecing;

import org.jspecify.annotations.NullMarked;
