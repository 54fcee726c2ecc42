/** Layouts whose widths strips of the stash already have; {@link hearthcloth.plan.ready.ReadyLayouts} is the door. */
@NullMarked
package hearthcloth.plan.ready;

import org.jspecify.annotations.NullMarked;
