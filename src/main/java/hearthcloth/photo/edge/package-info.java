@NullMarked
package hearthcloth.photo.edge;

import org.jspecify.annotations.NullMarked;
