/** Settings, safety copies, other devices, a studio's people. */
@NullMarked
package hearthcloth.web.house;

import org.jspecify.annotations.NullMarked;
