/** What is said in the room of framing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.framing;

import org.jspecify.annotations.NullMarked;
