/** Every value by which planning decides and that was tuned or chosen by us, by stage, with its unit and its reason. */
@NullMarked
package hearthcloth.plan.parameter;

import org.jspecify.annotations.NullMarked;
