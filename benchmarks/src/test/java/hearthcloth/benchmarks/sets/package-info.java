/** Formats and seeded instances. */
@NullMarked
package hearthcloth.benchmarks.sets;

import org.jspecify.annotations.NullMarked;
