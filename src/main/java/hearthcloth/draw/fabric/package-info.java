/** How a fabric is drawn from its words and its colour: its print to scale, its weave to the eye. */
@NullMarked
package hearthcloth.draw.fabric;

import org.jspecify.annotations.NullMarked;
