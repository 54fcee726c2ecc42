/** What the program says, in every language it speaks: which languages there are, and the catalogues of each room. */
@NullMarked
package hearthcloth.words;

import org.jspecify.annotations.NullMarked;
