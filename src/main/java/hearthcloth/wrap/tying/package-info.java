/**
 * Tying, for the hands and for the eye: the steps of every tie in words of our own, and what of a cloth shows once it is
 * tied.
 */
@NullMarked
package hearthcloth.wrap.tying;

import org.jspecify.annotations.NullMarked;
