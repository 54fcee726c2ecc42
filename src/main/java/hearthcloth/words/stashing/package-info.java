/** What is said in the room of stashing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.stashing;

import org.jspecify.annotations.NullMarked;
