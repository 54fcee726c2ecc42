/** How what is kept is written as JSON and read back; what is wrong with a store, in words. */
@NullMarked
package hearthcloth.store.json;

import org.jspecify.annotations.NullMarked;
