/** Our own problem told to an independent exact solver, OR-Tools CP-SAT. */
@NullMarked
package hearthcloth.benchmarks.cpsat;

import org.jspecify.annotations.NullMarked;
