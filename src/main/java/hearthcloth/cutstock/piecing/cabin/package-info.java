/** Small log cabins out of a heap: which scrap gives which bar, and how wide each bar is. */
@NullMarked
package hearthcloth.cutstock.piecing.cabin;

import org.jspecify.annotations.NullMarked;
