@NullMarked
package hearthcloth.photo.plane;

import org.jspecify.annotations.NullMarked;
