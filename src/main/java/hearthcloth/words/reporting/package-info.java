/** What is said in the room of reporting, in every language. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
@NullMarked
package hearthcloth.words.reporting;

import org.jspecify.annotations.NullMarked;
