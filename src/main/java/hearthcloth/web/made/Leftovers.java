package hearthcloth.web.made;

import gg.jte.html.escape.Escape;
import gg.jte.output.StringOutput;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.finishing.FinishingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.OffcutsLeft;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Locale;

/** What cutting a cloth left over, as its page tells and draws it. */
record Leftovers(OffcutsLeft left) {

    /** The most that are drawn, and the height of the tallest and the width of all, in dots. */
    private static final int DRAWN = 8;

    private static final double HIGH = 84;
    private static final double WIDE = 480;
    private static final double GAP = 10;

    static Leftovers of(Project cloth, Stash stash) {
        return new Leftovers(OffcutsLeft.of(cloth, stash));
    }

    List<OffcutsLeft.Left> all() {
        return left.all();
    }

    private static double mm(Length length) {
        return length.in(Unit.MILLIMETRE);
    }

    List<Piece> here() {
        return left.here();
    }

    /** How many there are, for a heading. */
    String heading(FinishingWords words) {
        return words.leftHeading(all().size());
    }

    /** Where they are. */
    String where(FinishingWords words) {
        int here = here().size();
        if (here == all().size()) {
            return words.leftBack(here);
        }
        return here == 0 ? words.leftUsed() : words.leftSome(String.valueOf(here));
    }

    /** The first of those that are there, side by side to one scale; each says its fabric and size. */
    String drawn(Swatches swatches, Voice voice) {
        List<Piece> some = here().stream().limit(DRAWN).toList();
        double tallest = some.stream().mapToDouble(piece -> low(piece)).max().orElse(1);
        double across = some.stream().mapToDouble(piece -> broad(piece)).sum();
        double scale = Math.min(HIGH / tallest, (WIDE - GAP * some.size()) / Math.max(1, across));
        StringBuilder svg = new StringBuilder();
        double x = 1;
        for (Piece piece : some) {
            svg.append(one(piece, x, scale, swatches, voice));
            x += broad(piece) * scale + GAP;
        }
        StringBuilder whole = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\" aria-hidden=\"true\" focusable=\"false\">",
                x,
                HIGH + 2,
                x,
                HIGH + 2));
        swatches.tiles(whole);
        return whole.append(svg).append("</svg>").toString();
    }

    /** One of them, standing on the line, under its name. */
    private static String one(Piece piece, double x, double scale, Swatches swatches, Voice voice) {
        return String.format(
                Locale.ROOT,
                "<g transform=\"translate(%.1f %.1f) scale(%.4f)\"><title>%s</title><rect width=\"%.1f\""
                        + " height=\"%.1f\" fill=\"%s\"/></g>",
                x,
                HIGH - low(piece) * scale + 1,
                scale,
                escaped(FinishingWords.in(voice.language())
                        .leftOne(piece.fabric().name(), voice.write(piece.size(), Rounding.DOWN))),
                broad(piece),
                low(piece),
                swatches.fill(piece.fabric()));
    }

    private static String escaped(String text) {
        StringOutput out = new StringOutput();
        Escape.htmlContent(text, out);
        return out.toString();
    }

    /** Each lies down: its longer side across. */
    private static double broad(Piece piece) {
        return mm(piece.size().width().max(piece.size().height()));
    }

    private static double low(Piece piece) {
        return Math.min(mm(piece.size().width()), mm(piece.size().height()));
    }
}
