@NullMarked
package hearthcloth.cutstock.cutjoin;

import org.jspecify.annotations.NullMarked;
