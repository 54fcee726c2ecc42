/** The cloth tied, and how it is tied. */
@NullMarked
package hearthcloth.web.tie;

import org.jspecify.annotations.NullMarked;
