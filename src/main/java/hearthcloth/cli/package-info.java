/** The shell: reads arguments and files, calls the rooms below, speaks to the maker. */
@NullMarked
package hearthcloth.cli;

import org.jspecify.annotations.NullMarked;
