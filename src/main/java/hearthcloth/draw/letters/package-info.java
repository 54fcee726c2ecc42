/** The letters of printed and drawn words: the fonts that ship with us, how wide each letter is, and what of a text may be shown. */
@NullMarked
package hearthcloth.draw.letters;

import org.jspecify.annotations.NullMarked;
