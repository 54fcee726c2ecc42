/** From a wish and a stash to proposals that can be cut and sewn. */
@NullMarked
package hearthcloth.plan;

import org.jspecify.annotations.NullMarked;
