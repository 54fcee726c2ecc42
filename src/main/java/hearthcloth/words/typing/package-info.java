/** What is said in the room of typing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.typing;

import org.jspecify.annotations.NullMarked;
