/** Cutting and sewing, one thing at a time. */
@NullMarked
package hearthcloth.web.make;

import org.jspecify.annotations.NullMarked;
