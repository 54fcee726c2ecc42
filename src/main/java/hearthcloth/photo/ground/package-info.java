/** What the pieces lie on, place by place, under the light as it falls. */
@NullMarked
package hearthcloth.photo.ground;

import org.jspecify.annotations.NullMarked;
