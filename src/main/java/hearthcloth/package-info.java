@NullMarked
package hearthcloth;

import org.jspecify.annotations.NullMarked;
