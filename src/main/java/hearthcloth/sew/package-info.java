/** The guide: from a plan to the steps of hands and machine. */
@NullMarked
package hearthcloth.sew;

import org.jspecify.annotations.NullMarked;
