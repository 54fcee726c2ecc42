/**
 * A tied cloth drawn dot by dot as a soft surface: both faces with their fabrics, light, and a shadow on the table. It is
 * drawn by arithmetic alone, so that it is the same on every machine. Knows surfaces and pictures, nothing of folds.
 */
@NullMarked
package hearthcloth.draw.soft;

import org.jspecify.annotations.NullMarked;
