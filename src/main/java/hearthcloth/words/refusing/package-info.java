/** What is said in the room of refusing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.refusing;

import org.jspecify.annotations.NullMarked;
