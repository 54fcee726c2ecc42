/** Several rectangles from a heap that gives just them, no scrap over and nothing lost. */
@NullMarked
package hearthcloth.cutstock.piecing.exact;

import org.jspecify.annotations.NullMarked;
