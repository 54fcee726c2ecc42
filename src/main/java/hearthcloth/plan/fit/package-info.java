@NullMarked
package hearthcloth.plan.fit;

import org.jspecify.annotations.NullMarked;
