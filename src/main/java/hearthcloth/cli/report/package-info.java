/** What the commands say: short paragraphs for people, JSON for programs. */
@NullMarked
package hearthcloth.cli.report;

import org.jspecify.annotations.NullMarked;
