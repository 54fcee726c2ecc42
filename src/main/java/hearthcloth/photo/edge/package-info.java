/** Where each side of a shape lies, to a fraction of a pixel, and how sure that is; the lens from how sides bow. */
@NullMarked
package hearthcloth.photo.edge;

import org.jspecify.annotations.NullMarked;
