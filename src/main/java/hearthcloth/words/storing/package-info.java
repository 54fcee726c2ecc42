/** What is said in the room of storing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.storing;

import org.jspecify.annotations.NullMarked;
