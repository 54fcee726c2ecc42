/** The assembly tree: patches joined by seams, the layouts that build it and the folds that answer every question about it. */
@NullMarked
package hearthcloth.cloth;

import org.jspecify.annotations.NullMarked;
