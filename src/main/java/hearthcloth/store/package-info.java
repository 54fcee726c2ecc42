/**
 * Stores the maker's work in one SQLite file, or in a studio's PostgreSQL database: the stash, the cloths, photographs,
 * pictures of fabrics, and what can be undone.
 */
@NullMarked
package hearthcloth.store;

import org.jspecify.annotations.NullMarked;
