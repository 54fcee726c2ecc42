/** Budgets and the walk that reworks an attempt. Knows no problem. */
@NullMarked
package hearthcloth.cutstock.search;

import org.jspecify.annotations.NullMarked;
