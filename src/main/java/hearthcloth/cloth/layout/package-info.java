@NullMarked
package hearthcloth.cloth.layout;

import org.jspecify.annotations.NullMarked;
