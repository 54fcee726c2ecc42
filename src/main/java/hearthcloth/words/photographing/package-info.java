/** What is said in the room of photographing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.photographing;

import org.jspecify.annotations.NullMarked;
