/**
 * Plane figures of a reading: outlines, their corners and sides measured, the largest rectangle within, the map from
 * picture to floor.
 */
@NullMarked
package hearthcloth.photo.plane;

import org.jspecify.annotations.NullMarked;
