/** Reads what makers write of their wishes, and says what cannot be read and how to mend it. */
@NullMarked
package hearthcloth.wish;

import org.jspecify.annotations.NullMarked;
