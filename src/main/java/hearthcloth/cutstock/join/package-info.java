@NullMarked
package hearthcloth.cutstock.join;

import org.jspecify.annotations.NullMarked;
