package hearthcloth.draw.picture;

import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Finds a place for every label of a drawing: on its own shape if it fits there, otherwise outside the drawing, on the
 * nearest side, with a leader. No two labels overlap: rooms are disjoint, and labels outside stand in rows.
 */
public final class Labels {

    /** The distance from the drawing to the first row outside it, and between rows, in millimetres. */
    private static final double GAP = 3;

    private final Bounds frame;
    private final double size;
    private final List<Label.Inside> inside = new ArrayList<>();
    private final Map<Edge, List<Label>> outside = new EnumMap<>(Edge.class);

    /** A side of the drawing. */
    public enum Edge {
        LEFT,
        TOP,
        RIGHT,
        BOTTOM;

        boolean isUpright() {
            return this == LEFT || this == RIGHT;
        }
    }

    /**
     * Places {@code labels} around {@code frame}.
     *
     * @param most size of the letters wanted, in millimetres
     * @param least size below which a label is placed outside instead
     */
    public Labels(Bounds frame, double most, double least, List<Label> labels) {
        this.frame = frame;
        this.size = least;
        for (Label label : labels) {
            label.inside(most, least)
                    .ifPresentOrElse(
                            inside::add,
                            () -> outside.computeIfAbsent(nearest(label.room()), edge -> new ArrayList<>())
                                    .add(label));
        }
    }

    /** The room of the labels outside {@code edge}, in millimetres. */
    public double gutter(Edge edge) {
        List<Label> labels = outside.getOrDefault(edge, List.of());
        return labels.isEmpty() ? 0 : GAP + rows(edge, labels) * thickness(edge, labels) + 1;
    }

    public void draw(Sketch sketch) {
        outside.forEach((edge, labels) -> drawOutside(sketch, edge, labels));
        inside.forEach(label -> label.draw(sketch));
    }

    private Edge nearest(Bounds room) {
        Point at = room.middle();
        double left = at.x() - frame.x();
        double right = frame.right() - at.x();
        double top = at.y() - frame.y();
        double bottom = frame.bottom() - at.y();
        double least = Math.min(Math.min(left, right), Math.min(top, bottom));
        if (least == right) {
            return Edge.RIGHT;
        }
        if (least == left) {
            return Edge.LEFT;
        }
        return least == bottom ? Edge.BOTTOM : Edge.TOP;
    }

    private double pitch(Edge edge, List<Label> labels) {
        return edge.isUpright() ? tallest(labels) + 0.6 : widest(labels) + 1.6;
    }

    private double thickness(Edge edge, List<Label> labels) {
        return edge.isUpright() ? widest(labels) + GAP : tallest(labels) + GAP;
    }

    private double widest(List<Label> labels) {
        return labels.stream()
                .mapToDouble(label -> Label.width(label.last(), size))
                .max()
                .orElse(0);
    }

    private double tallest(List<Label> labels) {
        return labels.stream()
                .mapToDouble(label -> Label.height(label.last(), size))
                .max()
                .orElse(0);
    }

    private int perRow(Edge edge, List<Label> labels) {
        double length = edge.isUpright() ? frame.height() : frame.width();
        return Math.max(1, (int) (length / pitch(edge, labels)));
    }

    private int rows(Edge edge, List<Label> labels) {
        return (labels.size() - 1) / perRow(edge, labels) + 1;
    }

    private void drawOutside(Sketch sketch, Edge edge, List<Label> labels) {
        Comparator<Label> alongEdge =
                Comparator.comparingDouble(label -> along(edge, label.room().middle()));
        List<Label> sorted = labels.stream().sorted(alongEdge).toList();
        int rows = rows(edge, labels);
        for (int row = 0; row < rows; row++) {
            List<Label> inRow = new ArrayList<>();
            for (int i = row; i < sorted.size(); i += rows) {
                inRow.add(sorted.get(i));
            }
            double out = GAP + row * thickness(edge, labels);
            double[] places = spread(edge, inRow, pitch(edge, labels));
            for (int i = 0; i < places.length; i++) {
                drawOne(sketch, edge, inRow.get(i), places[i], out);
            }
        }
    }

    private static double along(Edge edge, Point at) {
        return edge.isUpright() ? at.y() : at.x();
    }

    /** The places of labels along an edge, each beside its shape and moved only as far as its neighbours require. */
    private double[] spread(Edge edge, List<Label> labels, double pitch) {
        double from = (edge.isUpright() ? frame.y() : frame.x()) + pitch / 2;
        double to = (edge.isUpright() ? frame.bottom() : frame.right()) - pitch / 2;
        double[] places = new double[labels.size()];
        double next = from;
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(next, along(edge, labels.get(i).room().middle()));
            next = places[i] + pitch;
        }
        double last = Math.max(to, from);
        for (int i = places.length - 1; i >= 0; i--) {
            places[i] = Math.min(places[i], last);
            last = places[i] - pitch;
        }
        return places;
    }

    private void drawOne(Sketch sketch, Edge edge, Label label, double place, double out) {
        List<String> lines = label.last();
        double width = Label.width(lines, size);
        double height = Label.height(lines, size);
        Point end = switch (edge) {
            case LEFT -> new Point(frame.x() - out, place);
            case RIGHT -> new Point(frame.right() + out, place);
            case TOP -> new Point(place, frame.y() - out);
            case BOTTOM -> new Point(place, frame.bottom() + out);
        };
        Point middle = switch (edge) {
            case LEFT -> end.plus(-width / 2 - 0.6, 0);
            case RIGHT -> end.plus(width / 2 + 0.6, 0);
            case TOP -> end.plus(0, -height / 2);
            case BOTTOM -> end.plus(0, height / 2);
        };
        leader(sketch, label.room().middle(), end);
        Bounds room = new Bounds(middle.x() - width, middle.y() - height, width * 2, height * 2);
        new Label.Inside(new Label(room, Palette.SHEET, List.of(lines)), lines, size, Type.Way.ALONG)
                .drawBeside(sketch);
    }

    /** Draws a line in ink on a white one, so that it can be seen on any fabric. */
    private static void leader(Sketch sketch, Point from, Point to) {
        sketch.line(from, to, Stroke.solid(0.7, Palette.SHEET));
        sketch.add(new Mark.Disc(from, 0.75, Palette.SHEET));
        sketch.line(from, to, Stroke.solid(0.22, Palette.INK));
        sketch.add(new Mark.Disc(from, 0.5, Palette.INK));
    }
}
