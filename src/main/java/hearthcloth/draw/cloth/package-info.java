@NullMarked
package hearthcloth.draw.cloth;

import org.jspecify.annotations.NullMarked;
