/** From a wish and a stash to different proposals; {@link hearthcloth.plan.propose.Planner} is the door. */
@NullMarked
package hearthcloth.plan.propose;

import org.jspecify.annotations.NullMarked;
