/** How the parts of a pieced cloth are turned about where size and loss stay the same: seams that do not meet, fabrics spread. */
@NullMarked
package hearthcloth.cutstock.piecing.compose;

import org.jspecify.annotations.NullMarked;
