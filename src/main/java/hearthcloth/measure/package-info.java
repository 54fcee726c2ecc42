/** Exact lengths and sizes, how a maker writes them and how they are printed. Knows nothing of cloth. */
@NullMarked
package hearthcloth.measure;

import org.jspecify.annotations.NullMarked;
