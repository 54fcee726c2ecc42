package hearthcloth.draw.guide;

import hearthcloth.cloth.Cloth;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.PublishedRule;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.TradeFit;
import hearthcloth.wrap.TradeSize;
import hearthcloth.wrap.tie.Wrapped;
import hearthcloth.wrap.tying.Tying;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The gift's part of a printed guide: how it looks tied, what shows, how sure the size is, and how it is tied. */
public final class TiedPages {

    private static final double VIEWS = 88;
    private static final double STEP = 58;
    private static final double PICTURE = 0.42;
    private static final double BETWEEN = 6;

    private final Cloth cloth;
    private final Wrapped wrapped;
    private final Voice voice;
    private final Flow flow;
    private final PrintingWords words;

    public TiedPages(Cloth cloth, Wrapped wrapped, Voice voice, Flow flow) {
        this.cloth = cloth;
        this.wrapped = wrapped;
        this.voice = voice;
        this.flow = flow;
        this.words = voice.printing();
    }

    /** Adds both parts; where the cloth does not tie the gift, only the sentence that says so. */
    public void flow(Optional<TiedGift> tied) {
        flow.turn().heading(words.tiedTitle());
        paragraph(wrapped.sentence(cloth.finished(), voice));
        if (tied.isEmpty()) {
            return;
        }
        flow.gap(2).add(tied.get().views(flow.width(), VIEWS, PrintSizes.SMALL, voice));
        paragraph(words.tiedNear());
        whatShows(tied.get());
        size();
        tying(tied.get());
    }

    private void paragraph(String told) {
        flow.add(
                new TextColumn(flow.width()).words(told, PrintSizes.BODY).gap(1).finished(told));
    }

    private void whatShows(TiedGift tied) {
        flow.heading(words.tiedShows());
        for (String sentence : tied.whatShows().sentences(voice)) {
            flow.add(new TextColumn(flow.width())
                    .item("•", 4, sentence, PrintSizes.BODY)
                    .gap(0.6)
                    .finished(sentence));
        }
    }

    private void size() {
        flow.heading(words.tiedSure());
        Tie tie = wrapped.tie();
        if (tie.isKnotted()) {
            paragraph(wrapped.tail().doubt(tie, wrapped.gift(), voice));
        }
        Fit fit = wrapped.fit(cloth);
        Length spare = voice.ruler().mark(fit.tightest().spare(), Rounding.DOWN);
        String what = voice.tying().reason(fit.tightest().reason().name());
        String own =
                near(cloth.finished().width()) + " × " + near(cloth.finished().height());
        paragraph(spare.isPositive() ? words.tiedLeaves(what, own, near(spare)) : words.tiedJust(what, own));
        paragraph(PublishedRule.of(wrapped.gift())
                .sentence(wrapped.gift(), tie, wrapped.tail().usual(), voice));
        Length ours = tie.smallestSquare(wrapped.gift(), wrapped.tail().usual());
        TradeSize.enoughFor(ours).ifPresent(size -> paragraph(next(size)));
        paragraph(TradeFit.sentence(
                TradeFit.of(tie, wrapped.gift(), wrapped.tail().usual()), voice));
    }

    private String next(TradeSize size) {
        String uses = voice.tying().tradeUses(size.name());
        return size.trade().isEmpty()
                ? words.tiedNext(near(size.least()), uses)
                : words.tiedNextNamed(near(size.least()), size.trade(), uses);
    }

    private String how() {
        Tie tie = wrapped.tie();
        String suited = voice.tying().tieSuited(tie.name());
        String name = voice.tying().tieName(tie.name());
        return capital(
                tie.trade().isEmpty() ? words.tiedHow(suited, name) : words.tiedHowNamed(suited, name, tie.trade()));
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private String near(Length length) {
        return voice.write(length, Rounding.NEAREST);
    }

    private void tying(TiedGift tied) {
        Tying tying = Tying.of(wrapped.tie(), wrapped.gift(), voice.tying());
        flow.turn().heading(words.tiedTying());
        paragraph(how());
        int number = 1;
        for (Tying.Step step : tying.steps()) {
            Picture picture = tied.moment(step.moment(), flow.width() * PICTURE, STEP, words);
            flow.part(step(number++ + ".", List.of(step.words()), picture));
        }
        if (wrapped.tie().isKnotted()) {
            flow.heading(words.tiedKnot());
            Picture knot = tied.knot(flow.width() * PICTURE, STEP * 0.7, words);
            flow.add(step("", tying.knot(), knot));
        }
        flow.heading(words.tiedShort());
        paragraph(tying.ifShort());
        tied.whenShort(flow.width() * PICTURE, STEP, words).ifPresent(flow::add);
        flow.heading(words.tiedCare());
        for (String caution : tying.cautions()) {
            TextColumn column = new TextColumn(flow.width()).words(caution, 6, PrintSizes.CARE, Integer.MAX_VALUE);
            double reach = column.height();
            column.draw(0, (sketch, y) -> sketch.fill(new Bounds(2, y - reach + 1, 0.9, reach - 1), Palette.MADDER));
            flow.add(column.gap(1).finished(caution));
        }
    }

    /** A step with its picture on the left and its words on the right. */
    private Picture step(String number, List<String> lines, Picture picture) {
        double left = flow.width() * PICTURE;
        TextColumn words = new TextColumn(flow.width() - left - BETWEEN);
        int item = 1;
        for (String line : lines) {
            words.item(number.isEmpty() ? item++ + "." : number, 8, line, PrintSizes.BODY)
                    .gap(1);
        }
        Picture text = words.finished(number);
        Sketch sketch = new Sketch()
                .place(text, new Point(left + BETWEEN, 0))
                .place(picture, new Point((left - picture.width()) / 2, 1));
        return sketch.finished(number, flow.width(), Math.max(text.height(), picture.height() + 2));
    }
}
