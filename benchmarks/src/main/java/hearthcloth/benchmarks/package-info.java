/** The benchmarks' command line: reads problem sets, lets the searches answer, prints what they said and when. */
@NullMarked
package hearthcloth.benchmarks;

import org.jspecify.annotations.NullMarked;
