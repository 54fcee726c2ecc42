@NullMarked
package hearthcloth.photo.segment;

import org.jspecify.annotations.NullMarked;
