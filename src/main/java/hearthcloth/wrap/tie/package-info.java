/** One class a way of folding; {@link hearthcloth.wrap.tie.TiedFold} knows which tie is folded by which. */
@NullMarked
package hearthcloth.wrap.tie;

import org.jspecify.annotations.NullMarked;
