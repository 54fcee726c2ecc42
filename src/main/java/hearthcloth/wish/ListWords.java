package hearthcloth.wish;

import hearthcloth.measure.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Small matters of wording shared by the commands. */
public final class ListWords {

    private static final int SHOWN = 400;
    private static final Pattern UNIT = Pattern.compile("(?<=[\\d\\s½¼¾⅛⅜⅝⅞])(?:[a-zA-Z]+|[\"″”'])");

    private ListWords() {}

    /** One line without control characters, of limited length; what the maker typed must not move her cursor. */
    public static String plain(String text) {
        String plain = line(text);
        return plain.length() > SHOWN ? plain.substring(0, SHOWN) + "…" : plain;
    }

    /** One line without control characters, however long. */
    public static String line(String text) {
        return text.replaceAll("[\\p{Cntrl}]+", " ");
    }

    /** The first unit written in a text such as {@code box 30 x 20 x 8 cm}. */
    public static Optional<Unit> unitIn(String text) {
        Matcher matcher = UNIT.matcher(text);
        while (matcher.find()) {
            Optional<Unit> unit = Unit.named(matcher.group());
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }
}
