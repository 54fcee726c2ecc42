/** The workroom: a local web application over the rooms below. */
@NullMarked
package hearthcloth.web;

import org.jspecify.annotations.NullMarked;
