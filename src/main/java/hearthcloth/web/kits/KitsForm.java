package hearthcloth.web.kits;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Stash;
import hearthcloth.web.kit.PageContext;
import hearthcloth.wish.BadInputException;
import hearthcloth.wish.Door;
import hearthcloth.wish.WishField;
import hearthcloth.wish.WishList;
import hearthcloth.wish.WishWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.wrap.Gift;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What is wished on the kits page, as it was typed.
 *
 * @param students how many; empty where a list is meant
 * @param size of each student's cloth
 * @param lines a cloth a line, or a whole list with named columns
 */
public record KitsForm(String students, String size, String lines) {

    static final KitsForm EMPTY = new KitsForm("", "", "");

    static KitsForm of(Context context) {
        return new KitsForm(
                PageContext.field(context, "students"),
                PageContext.field(context, "size"),
                PageContext.field(context, "lines"));
    }

    /**
     * The cloths that are wished.
     *
     * @throws BadInputException with a sentence for each fault
     */
    List<WishList.Line> read(Stash heap, Voice voice) {
        TeachingWords words = TeachingWords.in(voice.language());
        Ruler ruler = voice.ruler();
        if (!students.isEmpty()) {
            WishWords all = new WishWords(Map.of(WishField.SIZE, size));
            return new WishList(all, heap, ruler).students(count(words), Door.PAGE, voice);
        }
        WishList list = new WishList(WishWords.NOTHING, heap, ruler);
        return list.read(isNamed() ? lines : named(ruler.unit()), words.kitsTheList());
    }

    private int count(TeachingWords words) {
        int count = students.matches("\\d{1,3}") ? Integer.parseInt(students) : 0;
        if (count < 1 || count > WishList.MOST) {
            throw new BadInputException(words.kitsCountFault(students, String.valueOf(WishList.MOST)));
        }
        return count;
    }

    /** Whether its first line names the columns. */
    private boolean isNamed() {
        List<String> first =
                List.of(lines.split("\n", 2)[0].toLowerCase(Locale.ROOT).strip().split("\\s*,\\s*", -1));
        return first.contains("name") && (first.contains("size") || first.contains("gift"));
    }

    /** The lines with their columns named: what follows the name is a gift if it reads as one, else a size. */
    private String named(Unit unit) {
        StringBuilder list = new StringBuilder("name,size,gift\n");
        for (String line : lines.split("\r?\n", -1)) {
            String[] parts = line.split(",", 2);
            String rest = parts.length < 2 ? "" : parts[1].strip();
            boolean gift = isGift(rest, unit);
            list.append(
                    line.isBlank()
                            ? "\n"
                            : quoted(parts[0].strip()) + "," + (gift ? "" : quoted(rest)) + ","
                                    + (gift ? quoted(rest) : "") + "\n");
        }
        return list.toString();
    }

    private static boolean isGift(String text, Unit unit) {
        try {
            Gift.parse(text, unit);
            return true;
        } catch (MeasureException e) {
            // A gift with a wrong number is told as a gift; a bare size has no word in it.
            return text.replaceAll("(?i)\\b(in|inch|inches|cm|mm|m|x|by)\\b", "")
                    .matches(".*\\p{L}{3,}.*");
        }
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "" : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
