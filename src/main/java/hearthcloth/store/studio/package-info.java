@NullMarked
package hearthcloth.store.studio;

import org.jspecify.annotations.NullMarked;
