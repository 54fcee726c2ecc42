/** What is said in the room of wrapping, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.wrapping;

import org.jspecify.annotations.NullMarked;
