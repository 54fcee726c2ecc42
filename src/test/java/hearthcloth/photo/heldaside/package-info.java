/**
 * A second drawer of test photographs, held aside as a judge: it was written without sight of the reader's code or of the
 * first drawer, and the reader is not tuned on its pictures one by one. Lengths are millimetres on the floor unless a name
 * says otherwise; light is linear until {@code Development}.
 */
@NullMarked
package hearthcloth.photo.heldaside;

import org.jspecify.annotations.NullMarked;
