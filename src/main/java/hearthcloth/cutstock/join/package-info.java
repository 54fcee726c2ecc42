/** Bars joined end to end from strips, with the fewest joins; bounds that prove it. */
@NullMarked
package hearthcloth.cutstock.join;

import org.jspecify.annotations.NullMarked;
