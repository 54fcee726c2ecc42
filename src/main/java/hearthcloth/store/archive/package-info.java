/** Everything in one file, out and in again. */
@NullMarked
package hearthcloth.store.archive;

import org.jspecify.annotations.NullMarked;
