/** What is said in the room of tying, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.tying;

import org.jspecify.annotations.NullMarked;
