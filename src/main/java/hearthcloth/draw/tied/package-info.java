/**
 * The tied gift drawn: a fold's facets as panes in space, sorted from far to near by splitting them where they cross,
 * each clothed with the patches and stitches that lie on it. Knows folds and cloths, nothing of plans or pages.
 */
@NullMarked
package hearthcloth.draw.tied;

import org.jspecify.annotations.NullMarked;
