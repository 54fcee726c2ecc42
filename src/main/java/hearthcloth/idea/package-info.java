/** The idea page: one file that anybody can open, with the planner inside. */
@NullMarked
package hearthcloth.idea;

import org.jspecify.annotations.NullMarked;
