/** "What have you got?": pieces typed, pasted, from a file; shown, changed, undone. */
@NullMarked
package hearthcloth.web.stash;

import org.jspecify.annotations.NullMarked;
