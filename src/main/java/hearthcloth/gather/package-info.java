/** From cloth read off a photograph to pieces for the stash; the one place where the shell and the workroom learn it. */
@NullMarked
package hearthcloth.gather;

import org.jspecify.annotations.NullMarked;
