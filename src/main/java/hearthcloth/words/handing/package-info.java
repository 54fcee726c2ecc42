/** What is said in the room of handing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.handing;

import org.jspecify.annotations.NullMarked;
