/** What every page shares: who asks, the frame round a page, fields of forms, troubles in words. */
@NullMarked
package hearthcloth.web.kit;

import org.jspecify.annotations.NullMarked;
