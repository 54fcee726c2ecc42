/**
 * The tied cloth as geometry: flat facets of cloth, each with the isometry that lays it round the gift, from the gift
 * outwards. Real millimetres throughout; pictures, models and figures of what shows are all made from this one list.
 *
 * <p>Frames. On the flat cloth: u to the maker's right, v away from her, origin under the gift's middle, seen from above
 * with the inside up. In space: x right, y away, z up, origin under the gift's middle on the table.
 */
@NullMarked
package hearthcloth.wrap.fold;

import org.jspecify.annotations.NullMarked;
