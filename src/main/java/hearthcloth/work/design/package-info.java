/** Deciding of a cloth before it is cut: keeping it, changing it, its colours, what is locked, a copy, the nearest that can be. */
@NullMarked
package hearthcloth.work.design;

import org.jspecify.annotations.NullMarked;
