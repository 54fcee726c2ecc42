/** A tied cloth as flat facets in space, and what of them can be seen. */
@NullMarked
package hearthcloth.wrap.fold;

import org.jspecify.annotations.NullMarked;
