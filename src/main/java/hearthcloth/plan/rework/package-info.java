@NullMarked
package hearthcloth.plan.rework;

import org.jspecify.annotations.NullMarked;
