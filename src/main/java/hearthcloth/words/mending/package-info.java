/** What is said in the room of mending, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.mending;

import org.jspecify.annotations.NullMarked;
