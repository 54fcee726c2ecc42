/** What is said in the room of planning, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.planning;

import org.jspecify.annotations.NullMarked;
