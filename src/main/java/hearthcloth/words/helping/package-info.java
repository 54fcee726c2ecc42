/** What is said in the room of helping, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.helping;

import org.jspecify.annotations.NullMarked;
