package hearthcloth.words.speech;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.Language;
import hearthcloth.words.measuring.EnglishMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.printing.EnglishPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.sewing.EnglishSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.tying.EnglishTying;
import hearthcloth.words.tying.TyingWords;
import java.util.List;

/**
 * How a maker is spoken to: lengths by her ruler, everything else in her language. A value that is handed down from where
 * something is asked for, so that two can be written side by side.
 *
 * @param ruler in whose marks lengths are written
 * @param measuring how numbers, units and lists are written
 */
public record Voice(Ruler ruler, Language language, MeasuringWords measuring, Rooms rooms) {

    /**
     * What is said in each room.
     *
     * @param printing the printed pages
     */
    public record Rooms(TyingWords tying, SewingWords sewing, PrintingWords printing) {}

    /** English, without touching any other language: what a page that carries its own program needs. */
    public static Voice english(Ruler ruler) {
        return new Voice(
                ruler,
                Language.ENGLISH,
                new EnglishMeasuring(),
                new Rooms(new EnglishTying(), new EnglishSewing(), new EnglishPrinting()));
    }

    /** Any language. */
    public static Voice of(Language language, Ruler ruler) {
        return new Voice(
                ruler,
                language,
                MeasuringWords.in(language),
                new Rooms(TyingWords.in(language), SewingWords.in(language), PrintingWords.in(language)));
    }

    /** Ties and gifts. */
    public TyingWords tying() {
        return rooms.tying;
    }

    /** The guide's steps. */
    public SewingWords sewing() {
        return rooms.sewing;
    }

    /** The printed pages. */
    public PrintingWords printing() {
        return rooms.printing;
    }

    /** Number and unit: {@code 38½ in}, {@code 97,8 cm}. */
    public String write(Length length, Rounding rounding) {
        return number(length, rounding) + " " + unit();
    }

    /** Width × height with the unit once. */
    public String write(Size size, Rounding rounding) {
        return number(size.width(), rounding) + " × " + write(size.height(), rounding);
    }

    /** The number alone. */
    public String number(Length length, Rounding rounding) {
        return local(ruler.number(length, rounding));
    }

    /** The ruler's unit. */
    public String unit() {
        return measuring.unit(ruler.unit().symbol());
    }

    /** Metres or yards with one decimal, for long runs such as thread. */
    public String run(Length length, Rounding rounding) {
        Unit far = ruler.isMetric() ? Unit.METRE : Unit.YARD;
        String both = ruler.run(length, rounding);
        return local(both.substring(0, both.indexOf(' '))) + " " + measuring.unit(far.symbol());
    }

    /** An area in whole squares of the unit. */
    public String area(double squareMm, Rounding rounding) {
        String both = ruler.area(squareMm, rounding);
        String number = both.substring(0, both.indexOf(' '));
        return ruler.isMetric() ? measuring.areaMetric(number) : measuring.areaInches(number);
    }

    /** A number with a decimal point as it is written here: {@code 2,5}. */
    public String local(String number) {
        return number.replace(".", measuring.decimal());
    }

    /** The same in the marks of another ruler. */
    public Voice by(Ruler other) {
        return new Voice(other, language, measuring, rooms);
    }

    /** Things in a row: {@code a, b and c}. */
    public String list(List<String> things) {
        String before = "";
        for (int i = 0; i < things.size(); i++) {
            String thing = things.get(i);
            before = i == 0
                    ? thing
                    : i + 1 == things.size() ? measuring.listLast(before, thing) : measuring.listNext(before, thing);
        }
        return before;
    }

    /** Sentences after each other; empty ones are left out. */
    public String sentences(List<String> all) {
        String before = "";
        for (String sentence : all) {
            before = before.isEmpty() ? sentence : sentence.isEmpty() ? before : measuring.sentences(before, sentence);
        }
        return before;
    }
}
