/**
 * Drawn things: immutable pictures in millimetres of paper, and the writers that turn one into SVG, PNG or a page of a
 * PDF. Knows colours and letters, nothing of cloth.
 */
@NullMarked
package hearthcloth.draw.picture;

import org.jspecify.annotations.NullMarked;
