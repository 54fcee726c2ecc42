@NullMarked
package hearthcloth.store.journal;

import org.jspecify.annotations.NullMarked;
