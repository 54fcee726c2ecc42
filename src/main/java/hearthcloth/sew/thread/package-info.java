@NullMarked
package hearthcloth.sew.thread;

import org.jspecify.annotations.NullMarked;
