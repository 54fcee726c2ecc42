@NullMarked
package hearthcloth.cutstock.bound;

import org.jspecify.annotations.NullMarked;
