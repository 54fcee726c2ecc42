/** What is said in the room of sewing, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.sewing;

import org.jspecify.annotations.NullMarked;
