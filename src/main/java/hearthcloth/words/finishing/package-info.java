/** What is said in the room of finishing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.finishing;

import org.jspecify.annotations.NullMarked;
