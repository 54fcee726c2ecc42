/** Cloths of scraps as they are, and of small log cabins set together: from a wish and a stash to plans. */
@NullMarked
package hearthcloth.plan.patchwork;

import org.jspecify.annotations.NullMarked;
