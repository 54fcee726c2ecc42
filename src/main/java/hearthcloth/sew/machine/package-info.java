@NullMarked
package hearthcloth.sew.machine;

import org.jspecify.annotations.NullMarked;
