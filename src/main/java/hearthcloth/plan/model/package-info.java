@NullMarked
package hearthcloth.plan.model;

import org.jspecify.annotations.NullMarked;
