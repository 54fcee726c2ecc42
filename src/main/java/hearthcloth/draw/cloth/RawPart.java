package hearthcloth.draw.cloth;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Edges;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One half of a seam as it lies on the table before it is sewn: its finished rectangle, the raw edges round it, and its
 * front. Lengths and places are those of the cloth.
 *
 * @param finished joining line to joining line
 * @param open allowances that are still open, on each side
 * @param extra what is cut too large, on each side; trimmed after sewing
 * @param shown the front, from the finished top left corner
 */
record RawPart(Rect finished, Edges open, Edges extra, Shown shown) {

    static RawPart of(Plan plan, Step step, Half half) {
        Map<String, Laid> laid = plan.laid();
        List<Laid> patches = step.patches(half).stream()
                .map(patch -> Objects.requireNonNull(laid.get(patch.place().id())))
                .toList();
        boolean untrimmed = half == step.added() || step.joinedBar().isPresent();
        Edges extra = untrimmed ? extra(patches) : Edges.NONE;
        Assembly assembly = step.seam().half(half);
        return new RawPart(
                around(patches),
                open(patches),
                extra,
                Shown.of(new Cloth(assembly, plan.cloth().making()), Face.FRONT));
    }

    private static Rect around(List<Laid> patches) {
        Length left = patches.get(0).at().x();
        Length top = patches.get(0).at().y();
        Length right = patches.get(0).at().right();
        Length bottom = patches.get(0).at().bottom();
        for (Laid laid : patches) {
            left = left.min(laid.at().x());
            top = top.min(laid.at().y());
            right = right.max(laid.at().right());
            bottom = bottom.max(laid.at().bottom());
        }
        return Rect.at(left, top, new Size(right.minus(left), bottom.minus(top)));
    }

    /**
     * The open allowances. Each side is closed by one seam or by the hem, so any patch along it has the side's
     * allowance.
     */
    private static Edges open(List<Laid> patches) {
        Rect whole = around(patches);
        Edges open = Edges.NONE;
        for (Laid laid : patches) {
            for (Side side : Side.values()) {
                if (line(laid.at(), side).equals(line(whole, side))) {
                    open = open.with(side, laid.allowances().on(side));
                }
            }
        }
        return open;
    }

    static Length line(Rect rect, Side side) {
        return switch (side) {
            case LEFT -> rect.x();
            case TOP -> rect.y();
            case RIGHT -> rect.right();
            case BOTTOM -> rect.bottom();
        };
    }

    /** What is cut too large: leeway at the right or lower end of a bar, trim on its outer edge. */
    private static Edges extra(List<Laid> patches) {
        Edges extra = Edges.NONE;
        for (Laid laid : patches) {
            Side outer = laid.patch().place() instanceof Place.Bar bar ? bar.side() : Side.RIGHT;
            Side across = outer == Side.LEFT ? Side.LEFT : Side.RIGHT;
            Side down = outer == Side.TOP ? Side.TOP : Side.BOTTOM;
            extra = extra.with(across, extra.on(across).max(laid.margin().width()))
                    .with(down, extra.on(down).max(laid.margin().height()));
        }
        return extra;
    }

    /** The rectangle as cut or as sewn so far, raw edge to raw edge. */
    Rect raw() {
        return grown(exact(), extra);
    }

    /** The rectangle from raw edge to raw edge, trimmed. */
    Rect exact() {
        return grown(finished, open);
    }

    private static Rect grown(Rect rect, Edges by) {
        return Rect.at(rect.x().minus(by.left()), rect.y().minus(by.top()), by.around(rect.size()));
    }

    /** A rectangle of the front, extended to the raw edges where it touches the finished ones. */
    Rect reaching(Rect shownAt) {
        Rect at = shownAt.movedBy(finished.x(), finished.y());
        Rect raw = raw();
        Length left = at.x().equals(finished.x()) ? raw.x() : at.x();
        Length top = at.y().equals(finished.y()) ? raw.y() : at.y();
        Length right = at.right().equals(finished.right()) ? raw.right() : at.right();
        Length bottom = at.bottom().equals(finished.bottom()) ? raw.bottom() : at.bottom();
        return Rect.at(left, top, new Size(right.minus(left), bottom.minus(top)));
    }
}
