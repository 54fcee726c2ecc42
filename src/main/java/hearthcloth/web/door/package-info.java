/** The workroom's door: which requests are heard, how large they may be, and how another device comes in. */
@NullMarked
package hearthcloth.web.door;

import org.jspecify.annotations.NullMarked;
