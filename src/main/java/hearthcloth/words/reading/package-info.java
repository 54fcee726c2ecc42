/** What is said in the room of reading, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.reading;

import org.jspecify.annotations.NullMarked;
