/** Hearth and bars before fabrics are chosen, in the usual orders. */
@NullMarked
package hearthcloth.cloth.layout;

import org.jspecify.annotations.NullMarked;
