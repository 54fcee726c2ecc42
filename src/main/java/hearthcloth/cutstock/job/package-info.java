/** The words of the cutting problem: what is to be cut from what, in whole units, and how an answer looks. */
@NullMarked
package hearthcloth.cutstock.job;

import org.jspecify.annotations.NullMarked;
