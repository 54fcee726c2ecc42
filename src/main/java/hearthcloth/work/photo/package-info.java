/** From a photograph's reading to pieces for the stash: sorted, named, put right by hand. */
@NullMarked
package hearthcloth.work.photo;

import org.jspecify.annotations.NullMarked;
