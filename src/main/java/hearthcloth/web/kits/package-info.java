/** Kits and gifts: many cloths planned together from the stash, pieces moved between them by hand, kept and printed. */
@NullMarked
package hearthcloth.web.kits;

import org.jspecify.annotations.NullMarked;
