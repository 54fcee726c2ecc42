/** What is said in the room of keeping, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.keeping;

import org.jspecify.annotations.NullMarked;
