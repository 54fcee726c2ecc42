@NullMarked
package hearthcloth.draw.guide;

import org.jspecify.annotations.NullMarked;
