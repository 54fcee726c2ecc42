/** Changes in order, so that each can be undone and done again. */
@NullMarked
package hearthcloth.store.journal;

import org.jspecify.annotations.NullMarked;
