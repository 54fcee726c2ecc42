/** The gallery, one cloth and all she can change of it, the shelf of her cloths. */
@NullMarked
package hearthcloth.web.cloth;

import org.jspecify.annotations.NullMarked;
