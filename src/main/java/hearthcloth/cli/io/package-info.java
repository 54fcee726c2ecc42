/** What the commands read and write: streams, bounded input, files written whole or not at all. */
@NullMarked
package hearthcloth.cli.io;

import org.jspecify.annotations.NullMarked;
