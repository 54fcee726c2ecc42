/** Keeps the maker's work in one SQLite file: the stash, the cloths, and what can be undone. */
@NullMarked
package hearthcloth.store;

import org.jspecify.annotations.NullMarked;
