@NullMarked
package hearthcloth.cloth.making;

import org.jspecify.annotations.NullMarked;
