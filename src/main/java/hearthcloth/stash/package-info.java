/** What the maker owns: fabrics and single physical pieces. Reads nothing and writes nothing outside memory. */
@NullMarked
package hearthcloth.stash;

import org.jspecify.annotations.NullMarked;
