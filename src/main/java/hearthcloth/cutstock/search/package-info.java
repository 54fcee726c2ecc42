@NullMarked
package hearthcloth.cutstock.search;

import org.jspecify.annotations.NullMarked;
