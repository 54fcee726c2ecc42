/** What Korean needs that other languages do not. */
@NullMarked
package hearthcloth.words.korean;

import org.jspecify.annotations.NullMarked;
