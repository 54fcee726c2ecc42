/** One sheet cut from edge to edge, held to sets with known answers and to trying every cut. */
@NullMarked
package hearthcloth.benchmarks.sheet;

import org.jspecify.annotations.NullMarked;
