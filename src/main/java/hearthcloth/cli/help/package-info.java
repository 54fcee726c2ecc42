/** What the shell explains of its commands: help, completions and the manual page, in each language. */
@NullMarked
package hearthcloth.cli.help;

import org.jspecify.annotations.NullMarked;
