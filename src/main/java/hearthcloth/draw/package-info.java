/** Pictures and print: SVG, PNG, PDF and the plan file. */
@NullMarked
package hearthcloth.draw;

import org.jspecify.annotations.NullMarked;
