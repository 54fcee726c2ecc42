/** Lines of pieces as they are written or spoken in Korean, Japanese, French, German and Spanish, brought to the English that is read. */
@NullMarked
package hearthcloth.stash.tongue;

import org.jspecify.annotations.NullMarked;
