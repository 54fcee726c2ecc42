@NullMarked
package hearthcloth.plan.propose;

import org.jspecify.annotations.NullMarked;
