/** JSON (RFC 8259) read and written as values, by the language alone, so that it runs in a browser too. */
@NullMarked
package hearthcloth.json;

import org.jspecify.annotations.NullMarked;
