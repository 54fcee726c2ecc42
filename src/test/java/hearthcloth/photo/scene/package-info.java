/** Draws test photographs with a known truth. Shares no code with the reader it judges. */
@NullMarked
package hearthcloth.photo.scene;

import org.jspecify.annotations.NullMarked;
