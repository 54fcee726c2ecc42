/** What a teacher hands on: rules by which a cloth is made from any heap, each written in a few words. */
@NullMarked
package hearthcloth.guideline;

import org.jspecify.annotations.NullMarked;
