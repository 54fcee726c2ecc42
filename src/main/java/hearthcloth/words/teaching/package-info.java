/** What is said in the room of teaching, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.teaching;

import org.jspecify.annotations.NullMarked;
