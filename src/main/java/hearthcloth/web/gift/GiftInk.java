package hearthcloth.web.gift;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Ink on paper: faces of a gift, lines on it, what is measured, and where on the drawing each measure is typed. */
final class GiftInk {

    /** A field takes this much of the drawing, in hundredths. */
    private static final double FIELD_X = 30;

    private static final double FIELD_Y = 19;

    private final StringBuilder svg = new StringBuilder();
    private final List<double[]> fields = new ArrayList<>();

    void append(String drawn) {
        svg.append(drawn);
    }

    void area(String face, double... at) {
        svg.append("<polygon class=\"").append(face).append("\" points=\"");
        for (int i = 0; i < at.length; i += 2) {
            svg.append(String.format(Locale.ROOT, "%.1f,%.1f ", at[i], at[i + 1]));
        }
        svg.append("\"/>");
    }

    void line(String path, Object... at) {
        svg.append("<path class=\"line\" d=\"")
                .append(String.format(Locale.ROOT, path, at))
                .append("\"/>");
    }

    /** A line from end to end of what is measured, and a field on its middle. */
    void measure(double x1, double y1, double x2, double y2) {
        svg.append(String.format(
                Locale.ROOT,
                "<path class=\"measure\" d=\"M%.1f %.1fL%.1f %.1f\"/><circle class=\"end\" cx=\"%.1f\" cy=\"%.1f\""
                        + " r=\"4\"/><circle class=\"end\" cx=\"%.1f\" cy=\"%.1f\" r=\"4\"/>",
                x1,
                y1,
                x2,
                y2,
                x1,
                y1,
                x2,
                y2));
        fields.add(new double[] {(x1 + x2) / 2, (y1 + y2) / 2});
    }

    /** On the middle of each measure, moved up or down where two would lie on each other. */
    List<GiftDrawing.Place> places(double width, double height) {
        for (double[] field : fields) {
            field[0] *= 100 / width;
            field[1] *= 100 / height;
            field[0] = Math.max(FIELD_X / 2, Math.min(100 - FIELD_X / 2, field[0]));
            field[1] = Math.max(FIELD_Y / 2, Math.min(100 - FIELD_Y / 2, field[1]));
        }
        for (int i = 1; i < fields.size(); i++) {
            double[] field = fields.get(i);
            for (double[] other : fields.subList(0, i)) {
                if (Math.abs(field[0] - other[0]) < FIELD_X && Math.abs(field[1] - other[1]) < FIELD_Y) {
                    field[1] = other[1] - FIELD_Y - 2;
                }
            }
        }
        return fields.stream()
                .map(field -> new GiftDrawing.Place((int) Math.round(field[0] / 5), (int) Math.round(field[1] / 5)))
                .toList();
    }

    String closed(double width, double height) {
        return String.format(
                Locale.ROOT,
                "<svg class=\"ink\" viewBox=\"0 0 %.0f %.0f\" aria-hidden=\"true\" focusable=\"false\">%s</svg>",
                width,
                height,
                svg);
    }
}
