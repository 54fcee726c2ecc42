/** Scraps put together by hand on the table: what fits next, what can be exchanged, the rest filled on demand. */
@NullMarked
package hearthcloth.plan.patchwork.byhand;

import org.jspecify.annotations.NullMarked;
