@NullMarked
package hearthcloth.store.json;

import org.jspecify.annotations.NullMarked;
