/** The model for the exact solver. */
@NullMarked
package hearthcloth.benchmarks.cpsat;

import org.jspecify.annotations.NullMarked;
