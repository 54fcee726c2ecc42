/** How a tie is done with the hands, and what shows once it is done. */
@NullMarked
package hearthcloth.wrap.tying;

import org.jspecify.annotations.NullMarked;
