/** What is said in the room of printing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.printing;

import org.jspecify.annotations.NullMarked;
