package hearthcloth.plan.propose;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * A stash whose answer is known by construction: every patch of a cloth, cut out, among scraps. The cloth can be made again
 * without a join or a cut.
 */
public record HiddenCloth(Stash stash, Size finished) {

    /** How its bar widths change; by the round, the cloth is a square. */
    public enum Widths {
        BY_ROUND,
        BY_PAIR,
        BY_BAR
    }

    public static HiddenCloth of(Random random, Order order, Widths change) {
        while (true) {
            Layout layout = layout(random, order, change);
            if (LayoutCandidate.isWell(layout.hearth(), layout.finished())) {
                return cutUp(random, order, layout);
            }
        }
    }

    private static Layout layout(Random random, Order order, Widths change) {
        List<Length> set = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            set.add(Length.inches(20 + random.nextInt(28), 8));
        }
        List<Layout.Course> cut = new ArrayList<>();
        int rounds = 2 + random.nextInt(3);
        for (int round = 0; round < rounds; round++) {
            Length upright = set.get(random.nextInt(3));
            Length level = change == Widths.BY_ROUND ? upright : set.get(random.nextInt(3));
            for (var side : order.sides()) {
                Length width = side.isUpright() ? upright : level;
                cut.add(new Layout.Course(side, change == Widths.BY_BAR ? set.get(random.nextInt(3)) : width));
            }
        }
        Making making = Making.inches();
        Length side = Length.inches(64 + random.nextInt(80), 8);
        Size hearth = change == Widths.BY_ROUND
                ? Size.square(side)
                : new Size(side, Length.inches(64 + random.nextInt(80), 8));
        return new Layout(Layout.hearthOfCut(hearth, cut, making), Layout.finishedOfCut(cut, making));
    }

    private static HiddenCloth cutUp(Random random, Order order, Layout layout) {
        Fabric plain = Stashes.fabric(0, Fabric.Faces.SAME, Fabric.Nap.ANY);
        List<List<Fabric>> bars = Collections.nCopies(layout.courses().size(), List.of(plain));
        Scheme scheme = new Scheme(Scheme.Kind.ALL, List.of(plain), bars);
        Design design = new Design(order, layout, scheme, Making.inches(), PiecingRules.inches());
        List<Size> sizes = new ArrayList<>();
        design.whole().laid().forEach(patch -> sizes.add(patch.cut()));
        for (int i = 0; i < 12; i++) {
            sizes.add(new Size(Length.inches(16 + random.nextInt(30), 8), Length.inches(32 + random.nextInt(30), 8)));
        }
        Collections.shuffle(sizes, random);
        List<Piece> pieces = new ArrayList<>();
        for (Size size : sizes) {
            Fabric fabric = Stashes.fabric(random.nextInt(4), Fabric.Faces.SAME, Fabric.Nap.ANY);
            pieces.add(Stashes.piece(pieces.size() + 2, fabric, size));
        }
        return new HiddenCloth(new Stash(pieces), layout.finished());
    }
}
