/** A guideline, and a cloth that was sent, as JSON files: read with every fault named, written so that nothing is lost. */
@NullMarked
package hearthcloth.guideline.file;

import org.jspecify.annotations.NullMarked;
