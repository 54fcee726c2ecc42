/** One draft against one stash: put to the search in its own words, its answer put back into a cloth. */
@NullMarked
package hearthcloth.plan.fit;

import org.jspecify.annotations.NullMarked;
