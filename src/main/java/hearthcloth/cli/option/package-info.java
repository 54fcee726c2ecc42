/** Options that several commands have, each written once. */
@NullMarked
package hearthcloth.cli.option;

import org.jspecify.annotations.NullMarked;
