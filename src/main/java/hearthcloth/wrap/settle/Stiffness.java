package hearthcloth.wrap.settle;

import hearthcloth.geometry.Point;

/** How stiff a cloth is from place to place, beside quilting cotton of one layer. */
@FunctionalInterface
public interface Stiffness {

    /** Quilting cotton all over. */
    Stiffness COTTON = place -> 1;

    /** At a point of the flat cloth on the table; 1 for quilting cotton, more where it bends less readily. */
    double at(Point place);
}
