/** Words for the look of cloth in Korean, Japanese, French, German and Spanish, as the English ones that the rooms know. */
@NullMarked
package hearthcloth.colour.tongue;

import org.jspecify.annotations.NullMarked;
