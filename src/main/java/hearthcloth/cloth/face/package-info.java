@NullMarked
package hearthcloth.cloth.face;

import org.jspecify.annotations.NullMarked;
