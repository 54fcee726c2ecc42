/** The planner as an idea page asks it, text in and text out; it runs in the program and, compiled, in a browser. */
@NullMarked
package hearthcloth.idea.answer;

import org.jspecify.annotations.NullMarked;
