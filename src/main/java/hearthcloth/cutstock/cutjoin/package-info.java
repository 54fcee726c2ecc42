/**
 * Cutting and joining at once: lanes out of plots, bars out of lanes; {@link hearthcloth.cutstock.cutjoin.CutAndJoin}
 * is the door.
 */
@NullMarked
package hearthcloth.cutstock.cutjoin;

import org.jspecify.annotations.NullMarked;
