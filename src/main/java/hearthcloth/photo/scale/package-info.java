@NullMarked
package hearthcloth.photo.scale;

import org.jspecify.annotations.NullMarked;
