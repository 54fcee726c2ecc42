/** A shared studio in PostgreSQL: its people, their visits, what is handed to all. */
@NullMarked
package hearthcloth.store.studio;

import org.jspecify.annotations.NullMarked;
