package hearthcloth.web.home;

import hearthcloth.measure.Unit;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.web.kit.Swatches;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Her scraps on the table, to scale, laid by a seed that is read off the pieces themselves: the same tomorrow, another
 * when something came or went. In inches of the table.
 */
final class ScrapHeap {

    /** The table in inches, and how many pieces are thrown on it at most. */
    private static final double WIDE = 78;

    private static final double HIGH = 40;
    private static final int MOST = 30;
    private static final int COLUMNS = 6;

    private static final double TILT = 9;

    private ScrapHeap() {}

    /** The heap as SVG, with its tiles; the largest lie lowest. */
    static String of(List<Piece> pieces, Swatches swatches) {
        List<Piece> some = new ArrayList<>(pieces);
        Random chance =
                new Random(pieces.stream().map(Piece::id).sorted().toList().hashCode());
        Collections.shuffle(some, chance);
        some = new ArrayList<>(some.subList(0, Math.min(MOST, some.size())));
        some.sort((one, other) -> Double.compare(other.areaMm2(), one.areaMm2()));
        double scale = scale(some);
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"heap\" viewBox=\"0 0 %.0f %.0f\" preserveAspectRatio=\"xMidYMin slice\""
                        + " aria-hidden=\"true\" focusable=\"false\">",
                WIDE * 25.4,
                HIGH * 25.4));
        swatches.tiles(svg);
        List<Integer> places = places(some.size(), chance);
        for (int i = 0; i < some.size(); i++) {
            laid(svg, some.get(i), swatches, spot(places.get(i), some.size(), chance), scale, chance);
        }
        tape(svg, scale);
        return svg.append("</svg>").toString();
    }

    /** A tape along the upper edge, with a number at each ten inches. */
    private static void tape(StringBuilder svg, double scale) {
        double inch = 25.4 * scale;
        svg.append(String.format(
                Locale.ROOT,
                "<rect class=\"tape\" x=\"-20\" y=\"-20\" width=\"%.0f\" height=\"80\"/>",
                WIDE * 25.4 + 40));
        StringBuilder ticks = new StringBuilder();
        for (int i = 1; i * inch < WIDE * 25.4; i++) {
            ticks.append(String.format(Locale.ROOT, "M%.1f 0v%d", i * inch, i % 10 == 0 ? 34 : i % 5 == 0 ? 26 : 16));
            if (i % 10 == 0) {
                svg.append(String.format(Locale.ROOT, "<text x=\"%.0f\" y=\"50\">%d</text>", i * inch + 8, i));
            }
        }
        svg.append("<path class=\"ticks\" d=\"").append(ticks).append("\"/>");
    }

    /** Drawn smaller where a piece is longer than the table is high. */
    private static double scale(List<Piece> pieces) {
        double longest = pieces.stream()
                .mapToDouble(
                        piece -> piece.size().width().max(piece.size().height()).in(Unit.INCH))
                .max()
                .orElse(1);
        return Math.min(1, HIGH * 0.8 / longest);
    }

    private static List<Integer> places(int count, Random chance) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(i);
        }
        Collections.shuffle(places, chance);
        return places;
    }

    /** A cell of the table, and somewhere in it. */
    private static double[] spot(int place, int count, Random chance) {
        int rows = Math.max(1, (count + COLUMNS - 1) / COLUMNS);
        double x = (place % COLUMNS + 0.5 + (chance.nextDouble() - 0.5) * 0.5) * WIDE / COLUMNS;
        double y = (Math.floorDiv(place, COLUMNS) + 0.5 + (chance.nextDouble() - 0.5) * 0.5) * HIGH / rows;
        return new double[] {x, y};
    }

    private static void laid(
            StringBuilder svg, Piece piece, Swatches swatches, double[] at, double scale, Random chance) {
        double wide = piece.size().width().in(Unit.MILLIMETRE) * scale;
        double high = piece.size().height().in(Unit.MILLIMETRE) * scale;
        boolean isLying = high > wide * 1.6 && chance.nextInt(4) > 0;
        double turn = (chance.nextDouble() - 0.5) * 2 * TILT + (isLying ? 90 : 0);
        Fabric fabric = piece.fabric();
        svg.append(String.format(
                Locale.ROOT,
                "<g transform=\"translate(%1$.0f %2$.0f) rotate(%3$.1f)\"><rect class=\"under\" x=\"%4$.0f\" y=\"%5$.0f\""
                        + " width=\"%6$.0f\" height=\"%7$.0f\"/><rect class=\"fray\" x=\"%8$.0f\" y=\"%9$.0f\""
                        + " width=\"%6$.0f\" height=\"%7$.0f\" stroke=\"%10$s\"/><rect x=\"%8$.0f\" y=\"%9$.0f\""
                        + " width=\"%6$.0f\" height=\"%7$.0f\" fill=\"%11$s\"/></g>",
                at[0] * 25.4,
                at[1] * 25.4,
                turn,
                -wide / 2 + 5,
                -high / 2 + 7,
                wide,
                high,
                -wide / 2,
                -high / 2,
                fabric.colour().hex(),
                swatches.fill(fabric)));
    }
}
