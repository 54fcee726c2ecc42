/** What is said in the room of ruling, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.ruling;

import org.jspecify.annotations.NullMarked;
