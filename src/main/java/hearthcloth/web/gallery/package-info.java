/** What her heap can make: proposals beside each other, wishes as chips. */
@NullMarked
package hearthcloth.web.gallery;

import org.jspecify.annotations.NullMarked;
