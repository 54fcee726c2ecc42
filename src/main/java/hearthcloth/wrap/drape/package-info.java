/** The cloth of a fold brought to rest over its gift, as a mesh. */
@NullMarked
package hearthcloth.wrap.drape;

import org.jspecify.annotations.NullMarked;
