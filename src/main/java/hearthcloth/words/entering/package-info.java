/** What is said in the room of entering, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.entering;

import org.jspecify.annotations.NullMarked;
