/**
 * What she does or tells of a cloth in the making, each as one class: it says which {@link hearthcloth.work.deed.Deed} that
 * is, to be kept as one change. Pages read what she wrote, ask here, and say what came of it.
 */
@NullMarked
package hearthcloth.work.deed;

import org.jspecify.annotations.NullMarked;
