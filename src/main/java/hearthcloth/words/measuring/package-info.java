/** What is said in the room of measuring, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.measuring;

import org.jspecify.annotations.NullMarked;
