/** What the colours of a whole heap are good for, before any cloth is planned of it. */
@NullMarked
package hearthcloth.plan.palette;

import org.jspecify.annotations.NullMarked;
