/** Every value of the search for cloths of scraps that was tuned, by stage, with its unit and its reason. */
@NullMarked
package hearthcloth.cutstock.piecing.parameter;

import org.jspecify.annotations.NullMarked;
