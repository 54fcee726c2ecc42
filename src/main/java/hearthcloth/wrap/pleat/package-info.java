/** Parts that folds share: panels, pleats, strips along a path, ends at a knot, cloth round a tube. */
@NullMarked
package hearthcloth.wrap.pleat;

import org.jspecify.annotations.NullMarked;
