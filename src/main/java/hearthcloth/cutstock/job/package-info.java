@NullMarked
package hearthcloth.cutstock.job;

import org.jspecify.annotations.NullMarked;
