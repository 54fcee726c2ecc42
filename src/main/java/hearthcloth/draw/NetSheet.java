package hearthcloth.draw;

import hearthcloth.cloth.Cloth;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.tie.Wrapped;
import java.util.Locale;

/**
 * The flat cloth with every fold of the tied gift, on one sheet of paper: cut out and folded, it is a small model of
 * the gift.
 */
final class NetSheet {

    private static final double RIM = 12;

    private NetSheet() {}

    static Picture of(Cloth cloth, Wrapped wrapped, TiedGift tied, Voice voice, Paper paper) {
        PrintingWords words = voice.printing();
        double width = paper.width() - 2 * RIM;
        Picture net = tied.net(width, words);
        double scale = tied.reach() / (width - 1);
        String title = words.netTitle(voice.tying().tieName(wrapped.tie().name()));
        TextColumn column = new TextColumn(width);
        column.words(title, PrintSizes.HEADING).gap(2);
        column.words(
                words.netHow(
                        wrapped.gift().describe(voice),
                        voice.local(String.format(Locale.ROOT, "1 : %.2f", scale)),
                        size(cloth, voice),
                        small(wrapped.gift(), scale).describe(voice)),
                PrintSizes.BODY);
        column.words(words.netFold(), PrintSizes.BODY);
        column.gap(5).picture(net, (width - net.width()) / 2);
        Picture sheet = column.finished(title);
        return new Sketch().place(sheet, new Point(RIM, RIM)).finished(title, paper.width(), paper.height());
    }

    private static String size(Cloth cloth, Voice voice) {
        return cloth.finished().isSquare()
                ? voice.printing().netSquare(voice.write(cloth.finished().width(), Rounding.NEAREST))
                : voice.write(cloth.finished(), Rounding.NEAREST);
    }

    /** The gift reduced to the scale of the paper, with no measure below the least that a gift may have. */
    private static Gift small(Gift gift, double scale) {
        Length leading = Length.mm(Rounding.NEAREST.whole(gift.leading().in(Unit.MILLIMETRE) / scale * 10))
                .dividedBy(10, Rounding.NEAREST);
        return gift.like(leading.max(Gift.SHORTEST));
    }
}
