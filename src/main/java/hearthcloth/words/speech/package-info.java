/** For whom something is written: the ruler and the language, and what is said in it. */
@NullMarked
package hearthcloth.words.speech;

import org.jspecify.annotations.NullMarked;
