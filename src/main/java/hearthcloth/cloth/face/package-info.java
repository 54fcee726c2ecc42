/** Folds that look at a cloth: plies at every place, and what each face shows. */
@NullMarked
package hearthcloth.cloth.face;

import org.jspecify.annotations.NullMarked;
