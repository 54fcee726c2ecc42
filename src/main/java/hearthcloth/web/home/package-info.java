/** The table she comes to: her heap, what is in the making, what is made; and the first time. */
@NullMarked
package hearthcloth.web.home;

import org.jspecify.annotations.NullMarked;
