/**
 * What stands out from the ground, told apart into shapes: floor lines and rug figures out, touching pieces parted.
 */
@NullMarked
package hearthcloth.photo.segment;

import org.jspecify.annotations.NullMarked;
