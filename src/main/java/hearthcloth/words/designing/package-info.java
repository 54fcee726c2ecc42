/** What is said in the room of designing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.designing;

import org.jspecify.annotations.NullMarked;
