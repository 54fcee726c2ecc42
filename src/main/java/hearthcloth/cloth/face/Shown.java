package hearthcloth.cloth.face;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * What one face of the cloth shows: a stack of coloured rectangles, later ones lying over earlier ones, and the rows of
 * stitches. Seen from that face (the back is already mirrored), origin top left.
 *
 * <p>On the face with the fells the wrapping half continues over the joining line by the fell's width, so its colour
 * line lies at the fold; on the other face it lies on the joining line. A bar shows w + 2f, w or w − 2f of its width w:
 * docs/sources.md#colour-line.
 */
public record Shown(Face face, List<Field> fields, List<Row> rows) {

    /** A rectangle of one patch's fabric; {@code fell} where it lies over its neighbour. */
    public record Field(Patch patch, Rect at, boolean fell) {}

    /** A straight row of stitches, a rectangle without thickness. */
    public record Row(Rect at, Kind kind) {
        /** What the row holds. */
        public enum Kind {
            JOIN,
            FELL,
            HEM
        }
    }

    public Shown {
        fields = List.copyOf(fields);
        rows = List.copyOf(rows);
    }

    /** How {@code cloth} looks from {@code face}. */
    public static Shown of(Cloth cloth, Face face) {
        Cloth seen = face == Face.FRONT ? cloth : cloth.turnedOver();
        boolean felled = cloth.making().fell() == face;
        SeamKind kind = cloth.making().seam();
        Length shift = felled ? kind.shiftOnFell() : Length.ZERO.minus(kind.shiftOnOther());
        List<Field> fields = seen.work().fold(new Painted(shift)).fields();
        List<Row> rows = new ArrayList<>();
        for (Step step : seen.steps()) {
            rows.add(new Row(besides(step, Length.ZERO.minus(kind.shiftOnOther())), Row.Kind.JOIN));
            if (kind.rows() > 1 && kind.band().isPositive() && kind.build() != SeamKind.Build.FRENCH) {
                rows.add(new Row(besides(step, kind.shiftOnFell()), Row.Kind.FELL));
            }
        }
        hem(seen, rows);
        return new Shown(face, fields, rows);
    }

    /** The place of a row {@code over} from the joining line, on the wrapped half; rows run along the folds. */
    private static Rect besides(Step step, Length over) {
        Length way = step.seam().wraps() == Half.FIRST ? over : Length.ZERO.minus(over);
        return step.seam().join() == Join.BESIDE
                ? step.line().movedBy(way, Length.ZERO)
                : step.line().movedBy(Length.ZERO, way);
    }

    private static void hem(Cloth cloth, List<Row> rows) {
        Length in = cloth.making().hem().second();
        if (!in.isPositive()) {
            return;
        }
        Length width = cloth.finished().width();
        Length height = cloth.finished().height();
        var across = new hearthcloth.measure.Size(width.minus(in.times(2)), Length.ZERO);
        var down = new hearthcloth.measure.Size(Length.ZERO, height.minus(in.times(2)));
        rows.add(new Row(Rect.at(in, in, across), Row.Kind.HEM));
        rows.add(new Row(Rect.at(in, height.minus(in), across), Row.Kind.HEM));
        rows.add(new Row(Rect.at(in, in, down), Row.Kind.HEM));
        rows.add(new Row(Rect.at(width.minus(in), in, down), Row.Kind.HEM));
    }

    /** What has been painted of an assembly, and which patch shows along each edge. */
    private record Part(List<Field> fields, EdgeRuns<Patch> rim) {}

    /** Paints the patches, then for each seam the strip by which one half lies over the other. */
    private record Painted(Length shift) implements Assembly.Fold<Part> {

        @Override
        public Part patch(Patch patch) {
            return new Part(
                    List.of(new Field(patch, Rect.at(Length.ZERO, Length.ZERO, patch.size()), false)),
                    EdgeRuns.around(patch, patch));
        }

        @Override
        public Part seam(Seam seam, Part first, Part second) {
            Length at = seam.join().across(seam.first().size());
            List<Field> fields = new ArrayList<>(first.fields());
            for (Field field : second.fields()) {
                fields.add(new Field(field.patch(), moved(seam.join(), field.at(), at), field.fell()));
            }
            if (!shift.equals(Length.ZERO)) {
                fields.addAll(strips(seam, first, second, at));
            }
            return new Part(
                    fields,
                    EdgeRuns.joined(seam, first.rim(), second.rim(), (a, b, line, side) -> edge(seam, a, b, line)));
        }

        /**
         * The half that lies over the other: the wrapping one where the shift is positive, otherwise the wrapped one.
         */
        private Half over(Seam seam) {
            return shift.isNegative() ? seam.wraps().other() : seam.wraps();
        }

        private Length width() {
            return shift.isNegative() ? Length.ZERO.minus(shift) : shift;
        }

        private List<Field> strips(Seam seam, Part first, Part second, Length at) {
            Half over = over(seam);
            Part top = over == Half.FIRST ? first : second;
            Length start = over == Half.FIRST ? at : at.minus(width());
            return top.rim().on(seam.join().facing(over)).stream()
                    .map(span -> new Field(span.value(), strip(seam.join(), start, span), true))
                    .toList();
        }

        private Rect strip(Join join, Length start, EdgeRuns.Span<Patch> span) {
            var size = join.size(width(), span.to().minus(span.from()));
            return join == Join.BESIDE ? Rect.at(start, span.from(), size) : Rect.at(span.from(), start, size);
        }

        private static Rect moved(Join join, Rect rect, Length by) {
            return join == Join.BESIDE ? rect.movedBy(by, Length.ZERO) : rect.movedBy(Length.ZERO, by);
        }

        private List<EdgeRuns.Span<Patch>> edge(
                Seam seam, List<EdgeRuns.Span<Patch>> first, List<EdgeRuns.Span<Patch>> second, Length at) {
            List<EdgeRuns.Span<Patch>> out = new ArrayList<>(first);
            out.addAll(second);
            Patch before = first.get(first.size() - 1).value();
            Patch after = second.get(0).value();
            return over(seam) == Half.FIRST
                    ? EdgeRuns.changed(out, at, at.plus(width()), was -> before)
                    : EdgeRuns.changed(out, at.minus(width()), at, was -> after);
        }
    }
}
