package hearthcloth.web.photo;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.Remeasurement;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.photo.FinishedOutline;
import hearthcloth.work.photo.PieceState;
import hearthcloth.work.photo.SortedPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The piece she looks at closely, where its corners are put right, it is parted, and its grain is marked.
 *
 * @param view what part of the picture is shown, for SVG
 * @param size of what is usable
 * @param sides each side's length with how far off it may be
 * @param by how it was measured
 * @param square its diagonals and how square it is, in words; empty unless it has four corners
 * @param line where the line to part it, or of its grain, is first drawn; empty while none is drawn
 */
public record PhotoChosen(
        SortedPiece piece,
        PieceState state,
        String view,
        String points,
        String box,
        String size,
        List<Corner> corners,
        List<String> sides,
        String by,
        List<String> doubts,
        String doing,
        List<Corner> line,
        String square) {

    private static final double MARGIN = 0.16;

    /** A place that can be moved. */
    public record Corner(int number, String x, String y) {}

    static PhotoChosen of(SortedPiece piece, FloorScale scale, Voice voice, PieceState state, String doing) {
        Ruler ruler = voice.ruler();
        List<Point> corners = piece.piece().outline().picture();
        double[] seen = seen(corners);
        return new PhotoChosen(
                piece,
                state,
                String.format(Locale.ROOT, "%.0f %.0f %.0f %.0f", seen[0], seen[1], seen[2], seen[3]),
                PhotoView.points(corners),
                PhotoView.points(
                        piece.usable().corners().stream().map(scale::inPicture).toList()),
                voice.write(piece.size(ruler), Rounding.DOWN),
                corners(corners),
                piece.piece().outline().sides().stream()
                        .map(side -> written(side, voice))
                        .toList(),
                by(piece, PicturingWords.in(voice.language())),
                PhotoView.said(piece, voice),
                doing,
                line(piece, scale, doing),
                FinishedOutline.of(piece.piece().outline(), scale)
                        .map(outline -> square(outline, voice))
                        .orElse(""));
    }

    private static String written(MeasuredLength length, Voice voice) {
        return voice.number(length.length(), Rounding.NEAREST) + " ± " + voice.write(length.giveOrTake(), Rounding.UP);
    }

    /** Diagonals and squareness in a sentence. */
    private static String square(FinishedOutline outline, Voice voice) {
        return PicturingWords.in(voice.language())
                .pieceSquare(
                        voice.local(String.format(Locale.ROOT, "%.1f", Math.ceil(10 * outline.offSquareDeg()) / 10)),
                        written(outline.diagonals().get(0), voice),
                        outline.isSame() ? "yes" : "no",
                        written(outline.diagonals().get(1), voice));
    }

    /** Left, top, width and height: the piece with room round it. */
    private static double[] seen(List<Point> corners) {
        double left = corners.stream().mapToDouble(Point::x).min().orElse(0);
        double right = corners.stream().mapToDouble(Point::x).max().orElse(1);
        double top = corners.stream().mapToDouble(Point::y).min().orElse(0);
        double low = corners.stream().mapToDouble(Point::y).max().orElse(1);
        double margin = MARGIN * Math.max(60, Math.max(right - left, low - top));
        return new double[] {left - margin, top - margin, right - left + 2 * margin, low - top + 2 * margin};
    }

    private static List<Corner> corners(List<Point> spots) {
        List<Corner> out = new ArrayList<>();
        for (Point spot : spots) {
            out.add(new Corner(out.size() + 1, PhotoView.number(spot.x()), PhotoView.number(spot.y())));
        }
        return out;
    }

    private static String by(SortedPiece piece, PicturingWords words) {
        return words.pieceBy(
                piece.isDrawn() ? "drawn" : piece.byHand() ? "hand" : "rim",
                piece.grain().isPresent() ? "yes" : "no");
    }

    /** Across the middle to part it, along the longest side for the grain. */
    private static List<Corner> line(SortedPiece piece, FloorScale scale, String doing) {
        List<Point> box = piece.usable().corners();
        boolean wide = piece.usable().width() >= piece.usable().height();
        Point middle = piece.usable().middle();
        Point end = middle(box.get(wide ? 2 : 3), box.get(wide ? 3 : 0));
        Point side = middle(box.get(wide ? 1 : 2), box.get(wide ? 2 : 3));
        return switch (doing) {
            case "split" ->
                corners(List.of(
                        scale.inPicture(beyond(middle, end, -1.12)), scale.inPicture(beyond(middle, end, 1.12))));
            case "grain" ->
                corners(List.of(
                        scale.inPicture(beyond(middle, side, -0.7)), scale.inPicture(beyond(middle, side, 0.7))));
            default -> List.of();
        };
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    private static Point beyond(Point from, Point to, double share) {
        return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    public boolean isOpen() {
        return state != PieceState.IN;
    }

    public boolean mayLoseCorner() {
        return corners.size() > 3;
    }

    public boolean mayGainCorner() {
        return corners.size() < Remeasurement.MOST_CORNERS;
    }

    /** The id of its fabric. */
    public String group() {
        return piece.group();
    }
}
