/** What shows of a tied cloth as a fine mesh, its folds eased: soft at once, for every tie. */
@NullMarked
package hearthcloth.wrap.settle;

import org.jspecify.annotations.NullMarked;
