@NullMarked
package hearthcloth.wrap.pleat;

import org.jspecify.annotations.NullMarked;
