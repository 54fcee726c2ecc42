/** Searching kept apart from what is searched: budgets, answers with their bounds, seeded chance. Knows no cloth. */
@NullMarked
package hearthcloth.plan.search;

import org.jspecify.annotations.NullMarked;
