/** What no cutting plan can beat. */
@NullMarked
package hearthcloth.cutstock.bound;

import org.jspecify.annotations.NullMarked;
