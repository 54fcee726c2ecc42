/**
 * Covering one rectangle, or several, from a heap of any size: searches of blocks put one after another, and repaired.
 * Net lengths throughout.
 */
@NullMarked
package hearthcloth.cutstock.piecing.cover;

import org.jspecify.annotations.NullMarked;
