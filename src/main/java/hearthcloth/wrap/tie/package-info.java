@NullMarked
package hearthcloth.wrap.tie;

import org.jspecify.annotations.NullMarked;
