/** A design changed by hand, by a cut gone wrong or by what the work measures, and planned again. */
@NullMarked
package hearthcloth.plan.rework;

import org.jspecify.annotations.NullMarked;
