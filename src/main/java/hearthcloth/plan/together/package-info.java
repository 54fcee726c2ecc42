/**
 * Many cloths from one heap, planned together so that nothing is promised twice and everybody gets a good one; {@link
 * hearthcloth.plan.together.PlanningTogether} is the door.
 */
@NullMarked
package hearthcloth.plan.together;

import org.jspecify.annotations.NullMarked;
