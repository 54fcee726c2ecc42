/** Gift and cloth: which size ties round what, by following the cloth over the object. */
@NullMarked
package hearthcloth.wrap;

import org.jspecify.annotations.NullMarked;
