/** What the runner prints. */
@NullMarked
package hearthcloth.benchmarks;

import org.jspecify.annotations.NullMarked;
