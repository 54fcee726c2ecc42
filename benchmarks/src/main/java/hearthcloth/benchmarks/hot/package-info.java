/** Microbenchmarks of the paths that are walked most, run by {@code benchmarks/run hot}. */
@NullMarked
package hearthcloth.benchmarks.hot;

import org.jspecify.annotations.NullMarked;
