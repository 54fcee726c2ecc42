package hearthcloth.words.speech;

import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.Language;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.room.EnglishRooms;
import hearthcloth.words.room.FrenchRooms;
import hearthcloth.words.room.GermanRooms;
import hearthcloth.words.room.JapaneseRooms;
import hearthcloth.words.room.KoreanRooms;
import hearthcloth.words.room.Rooms;
import hearthcloth.words.room.SpanishRooms;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.tying.TyingWords;
import java.util.List;
import java.util.function.BinaryOperator;

/**
 * How a maker is spoken to: lengths by her ruler, everything else in her language. A value that is handed down from where
 * something is asked for, so that two can be written side by side.
 *
 * @param ruler in whose marks lengths are written
 * @param rooms what is said in each room of catalogues
 */
public record Voice(Ruler ruler, Language language, Rooms rooms) {

    /** English, without touching any other language: what a page that carries its own program needs. */
    public static Voice english(Ruler ruler) {
        return new Voice(ruler, Language.ENGLISH, new EnglishRooms());
    }

    /** Any language; the classes of the others are not touched. */
    public static Voice of(Language language, Ruler ruler) {
        return switch (language) {
            case ENGLISH -> english(ruler);
            case KOREAN -> new Voice(ruler, language, new KoreanRooms());
            case JAPANESE -> new Voice(ruler, language, new JapaneseRooms());
            case FRENCH -> new Voice(ruler, language, new FrenchRooms());
            case GERMAN -> new Voice(ruler, language, new GermanRooms());
            case SPANISH -> new Voice(ruler, language, new SpanishRooms());
        };
    }

    /** How numbers, units and lists are written. */
    public MeasuringWords measuring() {
        return rooms.measuring();
    }

    /** Ties and gifts. */
    public TyingWords tying() {
        return rooms.tying();
    }

    /** The guide's steps. */
    public SewingWords sewing() {
        return rooms.sewing();
    }

    /** The printed pages. */
    public PrintingWords printing() {
        return rooms.printing();
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
        return measuring().unit(ruler.unit().symbol());
    }

    /** Metres or yards with one decimal, for long runs such as thread. */
    public String run(Length length, Rounding rounding) {
        Unit far = ruler.isMetric() ? Unit.METRE : Unit.YARD;
        String both = ruler.run(length, rounding);
        return local(both.substring(0, both.indexOf(' '))) + " " + measuring().unit(far.symbol());
    }

    /** An area in whole squares of the unit. */
    public String area(double squareMm, Rounding rounding) {
        String number = Long.toString(ruler.squares(squareMm, rounding));
        return ruler.isMetric() ? measuring().areaMetric(number) : measuring().areaInches(number);
    }

    /** A number with a decimal point as it is written here: {@code 2,5}. */
    public String local(String number) {
        return number.replace(".", measuring().decimal());
    }

    /** The same in the marks of another ruler. */
    public Voice by(Ruler other) {
        return new Voice(other, language, rooms);
    }

    /** Things in a row: {@code a, b and c}. */
    public String list(List<String> things) {
        return joined(things, measuring()::listNext, measuring()::listLast);
    }

    /** One of several things: {@code a, b or c}. */
    public String either(List<String> things) {
        return joined(things, measuring()::listNext, measuring()::listOr);
    }

    /** Things in a row that nothing but commas joins. */
    public String commas(List<String> things) {
        return joined(things, measuring()::listNext, measuring()::listNext);
    }

    /** Things in a row that have commas of their own: {@code a; b; c}. */
    public String semicolons(List<String> things) {
        return joined(things, measuring()::listApart, measuring()::listApart);
    }

    private static String joined(List<String> things, BinaryOperator<String> next, BinaryOperator<String> last) {
        String before = "";
        for (int i = 0; i < things.size(); i++) {
            BinaryOperator<String> join = i + 1 == things.size() ? last : next;
            before = i == 0 ? things.get(i) : join.apply(before, things.get(i));
        }
        return before;
    }

    /** Sentences after each other; empty ones are left out. */
    public String sentences(List<String> all) {
        String before = "";
        for (String sentence : all) {
            before = before.isEmpty()
                    ? sentence
                    : sentence.isEmpty() ? before : measuring().sentences(before, sentence);
        }
        return before;
    }
}
