/** The guide one thing at a time, and what is learnt from her own measures and times. */
@NullMarked
package hearthcloth.sew.machine;

import org.jspecify.annotations.NullMarked;
