@NullMarked
package hearthcloth.photo.ground;

import org.jspecify.annotations.NullMarked;
