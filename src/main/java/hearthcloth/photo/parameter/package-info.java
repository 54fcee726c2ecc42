/** Every value by which the reader of photographs decides and that was tuned, by stage, with its unit and its reason. */
@NullMarked
package hearthcloth.photo.parameter;

import org.jspecify.annotations.NullMarked;
