/** What is said in the room of making, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.making;

import org.jspecify.annotations.NullMarked;
