/** Photographs of scraps, read beside the pages, put right and taken in. */
@NullMarked
package hearthcloth.web.photo;

import org.jspecify.annotations.NullMarked;
