/** What is said in the room of picturing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.picturing;

import org.jspecify.annotations.NullMarked;
