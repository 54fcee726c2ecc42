/** "What will it wrap?" */
@NullMarked
package hearthcloth.web.gift;

import org.jspecify.annotations.NullMarked;
