/**
 * The words of planning: what is wished, a design, a plan with its cuts and figures, and the last check of a plan.
 */
@NullMarked
package hearthcloth.plan.model;

import org.jspecify.annotations.NullMarked;
