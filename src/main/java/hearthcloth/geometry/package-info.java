/**
 * Plane and space in real numbers: the one point, line, polygon and vector that photographs, tied cloths and paper share.
 * What a length is worth (pixels, millimetres of floor, cloth or paper) the holder says.
 */
@NullMarked
package hearthcloth.geometry;

import org.jspecify.annotations.NullMarked;
