package hearthcloth.cloth;

import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;

/** Where a part of the tree lies in the cloth and what closes its four sides; this context is handed down a fold. */
record SeamFrame(Length x, Length y, Edges closed) {

    static SeamFrame whole(Making making) {
        return new SeamFrame(Length.ZERO, Length.ZERO, Edges.all(making.hem().allowance()));
    }

    SeamFrame half(Seam seam, Half half, SeamKind kind) {
        Side sewn = seam.join().facing(half);
        Edges edges = closed.with(sewn, kind.allowance(seam.wraps() == half));
        Length before = half == Half.FIRST
                ? Length.ZERO
                : seam.join().across(seam.first().size());
        return seam.join() == Join.BESIDE
                ? new SeamFrame(x.plus(before), y, edges)
                : new SeamFrame(x, y.plus(before), edges);
    }

    /** The joining line of {@code seam} as a rectangle without thickness. */
    Rect line(Seam seam) {
        Length across = seam.join().across(seam.first().size());
        Length along = seam.join().edge(seam.first().size());
        return seam.join() == Join.BESIDE
                ? Rect.at(x.plus(across), y, seam.join().size(Length.ZERO, along))
                : Rect.at(x, y.plus(across), seam.join().size(Length.ZERO, along));
    }
}
