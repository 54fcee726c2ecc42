/**
 * The work as it really goes: what was done, in order, to which pieces and cloths; what rests on what; which cloth counts
 * on which piece. Knows no database, no JSON and no pages.
 */
@NullMarked
package hearthcloth.work;

import org.jspecify.annotations.NullMarked;
