/** A class at work: students come in from their phones, fit the idea to their own scraps, and a wall shows their cloths. */
@NullMarked
package hearthcloth.web.lesson;

import org.jspecify.annotations.NullMarked;
