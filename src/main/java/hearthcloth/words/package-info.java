@NullMarked
package hearthcloth.words;

import org.jspecify.annotations.NullMarked;
