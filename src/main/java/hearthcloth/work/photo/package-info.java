@NullMarked
package hearthcloth.work.photo;

import org.jspecify.annotations.NullMarked;
