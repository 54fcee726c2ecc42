/** Which fabric each bar is of, beside an exact solver; in Hearthcloth's own package, whose problem it solves. */
@NullMarked
package hearthcloth.plan.colour;

import org.jspecify.annotations.NullMarked;
