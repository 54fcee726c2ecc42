/** Every room of what is said, in one language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.room;

import org.jspecify.annotations.NullMarked;
