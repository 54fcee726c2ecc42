/** A finished cloth: its photograph, its slip, what it wrapped, what is left over. */
@NullMarked
package hearthcloth.web.made;

import org.jspecify.annotations.NullMarked;
