/** Problem sets as files: their formats, and seeded instances of the same kinds. */
@NullMarked
package hearthcloth.benchmarks.sets;

import org.jspecify.annotations.NullMarked;
