/** Loads that take long: programs of the long run that read the clock, and no tests of {@code ./check}. */
@NullMarked
package hearthcloth.load;

import org.jspecify.annotations.NullMarked;
