/** Functions of real numbers whose answers are the same bits on every machine and in a browser. */
@NullMarked
package hearthcloth.number;

import org.jspecify.annotations.NullMarked;
