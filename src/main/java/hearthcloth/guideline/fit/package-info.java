/** From a guideline and a heap to the nearest cloths; {@link hearthcloth.guideline.fit.GuidelinePlanner} is the door. */
@NullMarked
package hearthcloth.guideline.fit;

import org.jspecify.annotations.NullMarked;
