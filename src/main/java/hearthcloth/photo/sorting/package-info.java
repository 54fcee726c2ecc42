/**
 * What the maker makes of a reading before its pieces come into the stash: outlines put right, pieces parted, left out,
 * sorted by fabric and named. Values only: each change gives a new {@link hearthcloth.photo.sorting.Sorting}.
 */
@NullMarked
package hearthcloth.photo.sorting;

import org.jspecify.annotations.NullMarked;
