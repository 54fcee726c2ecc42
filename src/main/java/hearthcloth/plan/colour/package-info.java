/** Colour planned like joins: what the eye makes of a cloth, and what may be exchanged for it at no loss. */
@NullMarked
package hearthcloth.plan.colour;

import org.jspecify.annotations.NullMarked;
