package hearthcloth.cloth.face;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * How many plies the needle meets wherever a seam or the hem crosses something. Derived from the tree: a patch is one
 * ply, a seam makes of the plies of its two edges what its {@link SeamKind.Build} says, the hem makes three of each.
 *
 * <p>Values to check against: plain felled band 4, T crossing 10, four-way crossing 16, seam into hem 12, square hem
 * corner 9 (docs/sources.md#plies).
 */
public final class Layers {

    /** What is crossed at a thick place. */
    public enum Kind {
        CROSSING,
        HEM,
        CORNER
    }

    /**
     * A place where more plies meet than on a plain run of seam or hem.
     *
     * @param step number of the seam being sewn, from 1; 0 at the hem
     * @param at the place in the finished cloth seen from the front
     */
    public record Spot(Kind kind, int step, Rect at, int plies) {}

    private Layers() {}

    /** Plies along a plain run of seam. */
    public static int band(Cloth cloth) {
        return cloth.making().seam().build().plies(1, 1);
    }

    /** Every thick place, in sewing order, the hem last. */
    public static List<Spot> spots(Cloth cloth) {
        SeamKind kind = cloth.making().seam();
        List<Spot> spots = new ArrayList<>();
        for (Step step : cloth.steps()) {
            for (EdgeRuns.Span<Integer> span : along(step.seam(), kind)) {
                if (span.value() > band(cloth)) {
                    spots.add(new Spot(Kind.CROSSING, step.number(), on(step, span), span.value()));
                }
            }
        }
        hem(cloth, spots);
        return List.copyOf(spots);
    }

    /** The most plies under the needle anywhere, at least 1. */
    public static int most(Cloth cloth) {
        int plain = cloth.work() instanceof Seam ? band(cloth) : 1;
        return spots(cloth).stream().mapToInt(Spot::plies).reduce(plain, Math::max);
    }

    private static void hem(Cloth cloth, List<Spot> spots) {
        if (!cloth.making().hem().allowance().isPositive()) {
            return;
        }
        EdgeRuns<Integer> rim = cloth.work().fold(new Plies(cloth.making().seam()));
        for (Side side : Side.values()) {
            Length far = side == Side.RIGHT
                    ? cloth.finished().width()
                    : side == Side.BOTTOM ? cloth.finished().height() : Length.ZERO;
            for (EdgeRuns.Span<Integer> span : rim.on(side)) {
                if (span.value() > 1) {
                    spots.add(new Spot(Kind.HEM, 0, edge(side, far, span), Hem.PLIES * span.value()));
                }
            }
        }
        if (cloth.making().hem().corner() == Hem.Corner.SQUARE) {
            for (Length y : List.of(Length.ZERO, cloth.finished().height())) {
                for (Length x : List.of(Length.ZERO, cloth.finished().width())) {
                    Rect at = Rect.at(x, y, hearthcloth.measure.Size.square(Length.ZERO));
                    spots.add(new Spot(Kind.CORNER, 0, at, Hem.PLIES * Hem.PLIES));
                }
            }
        }
    }

    private static List<EdgeRuns.Span<Integer>> along(Seam seam, SeamKind kind) {
        Plies plies = new Plies(kind);
        List<EdgeRuns.Span<Integer>> wrapping =
                seam.half(seam.wraps()).fold(plies).on(seam.join().facing(seam.wraps()));
        Half wrapped = seam.wraps().other();
        List<EdgeRuns.Span<Integer>> under =
                seam.half(wrapped).fold(plies).on(seam.join().facing(wrapped));
        return EdgeRuns.merged(wrapping, under, kind.build()::plies);
    }

    private static Rect on(Step step, EdgeRuns.Span<Integer> span) {
        Length along = span.to().minus(span.from());
        return step.seam().join() == Join.BESIDE
                ? Rect.at(
                        step.line().x(),
                        step.line().y().plus(span.from()),
                        step.seam().join().size(Length.ZERO, along))
                : Rect.at(
                        step.line().x().plus(span.from()),
                        step.line().y(),
                        step.seam().join().size(Length.ZERO, along));
    }

    private static Rect edge(Side side, Length far, EdgeRuns.Span<Integer> span) {
        Length along = span.to().minus(span.from());
        return side.isUpright()
                ? Rect.at(far, span.from(), Join.BESIDE.size(Length.ZERO, along))
                : Rect.at(span.from(), far, Join.BELOW.size(Length.ZERO, along));
    }

    /** Plies along the rim of an assembly. */
    private record Plies(SeamKind kind) implements Assembly.Fold<EdgeRuns<Integer>> {

        @Override
        public EdgeRuns<Integer> patch(Patch patch) {
            return EdgeRuns.around(patch, 1);
        }

        @Override
        public EdgeRuns<Integer> seam(Seam seam, EdgeRuns<Integer> first, EdgeRuns<Integer> second) {
            return EdgeRuns.joined(seam, first, second, (one, other, at, side) -> meeting(seam, one, other, at));
        }

        /** Where a seam ends at an edge, the edge is as thick there as the seam, as far as its band reaches. */
        private List<EdgeRuns.Span<Integer>> meeting(
                Seam seam, List<EdgeRuns.Span<Integer>> first, List<EdgeRuns.Span<Integer>> second, Length at) {
            int ofFirst = first.get(first.size() - 1).value();
            int ofSecond = second.get(0).value();
            boolean firstWraps = seam.wraps() == Half.FIRST;
            int plies = kind.build().plies(firstWraps ? ofFirst : ofSecond, firstWraps ? ofSecond : ofFirst);
            List<EdgeRuns.Span<Integer>> out = new ArrayList<>(first);
            out.addAll(second);
            Length before = firstWraps ? kind.reachOverWrapping() : kind.reachOverWrapped();
            Length after = firstWraps ? kind.reachOverWrapped() : kind.reachOverWrapping();
            return EdgeRuns.changed(out, at.minus(before), at.plus(after), was -> Math.max(was, plies));
        }
    }
}
