package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Small drafts by hand, and what the search makes of them. */
public final class Trials {

    static final Fabric WHITE = fabric("White", 0xffffff);
    public static final Fabric GREY = fabric("Grey", 0x777777);
    static final Fabric NEAR = fabric("Near", 0x6a6a6a);
    static final Fabric BLACK = fabric("Black", 0x000000);

    private Trials() {}

    static Fabric fabric(String name, int rgb) {
        return new Fabric(name, Colour.of(rgb), Fabric.Faces.SAME, Fabric.Nap.ANY);
    }

    public static Piece piece(int row, Fabric fabric, long widthEighths, long heightEighths) {
        return Stashes.piece(row, fabric, new Size(Length.inches(widthEighths, 8), Length.inches(heightEighths, 8)));
    }

    /** A piece of 60 × 60 in of each. */
    static Supply plenty(Fabric... fabrics) {
        List<Piece> pieces = new ArrayList<>();
        for (Fabric fabric : fabrics) {
            pieces.add(piece(pieces.size() + 2, fabric, 480, 480));
        }
        return new Supply(new Stash(pieces));
    }

    /** A square hearth and bars, both as finished, in eighths of an inch. */
    static LayoutCandidate shape(Order order, int rounds, long hearth, long bar) {
        Layout layout = new Layout(
                Size.square(Length.inches(hearth, 8)), Layout.courses(order, rounds, List.of(Length.inches(bar, 8))));
        return new LayoutCandidate(order, rounds, layout, List.of());
    }

    static Draft draft(
            LayoutCandidate shape, Scheme.Kind kind, Fabric hearth, Function<Layout.Slot, List<Fabric>> fabrics) {
        List<List<Fabric>> bars = shape.layout().slots().stream().map(fabrics).toList();
        Scheme scheme = new Scheme(kind, List.of(hearth), bars);
        return new Draft(
                shape, new Design(shape.order(), shape.layout(), scheme, Making.inches(), PiecingRules.inches()));
    }

    static DraftTrial fitted(Draft draft, Supply supply) {
        return Fitting.fit(draft, supply, 200, 1, Budget.steps(200)).orElseThrow();
    }

    /** A hearth of one fabric in bars of another, from plenty of both. */
    static DraftTrial trial(LayoutCandidate shape, Scheme.Kind kind, Fabric hearth, Fabric bars) {
        return fitted(draft(shape, kind, hearth, slot -> List.of(bars)), plenty(hearth, bars));
    }
}
