@NullMarked
package hearthcloth.photo.image;

import org.jspecify.annotations.NullMarked;
