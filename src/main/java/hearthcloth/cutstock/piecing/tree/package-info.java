/** What free piecing makes: a tree of patches and seams, in whole lengths of one unit. */
@NullMarked
package hearthcloth.cutstock.piecing.tree;

import org.jspecify.annotations.NullMarked;
