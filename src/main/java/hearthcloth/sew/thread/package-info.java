/** Stitches and the thread they need. */
@NullMarked
package hearthcloth.sew.thread;

import org.jspecify.annotations.NullMarked;
