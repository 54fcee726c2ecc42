@NullMarked
package hearthcloth.store.archive;

import org.jspecify.annotations.NullMarked;
