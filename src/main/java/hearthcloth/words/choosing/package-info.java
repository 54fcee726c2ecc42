/** What is said in the room of choosing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.choosing;

import org.jspecify.annotations.NullMarked;
