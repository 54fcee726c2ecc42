package hearthcloth.web.make;

import hearthcloth.web.kit.ErrorPages;
import hearthcloth.web.kit.PageContext;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is asked back about something she wrote, at the place where she wrote it; what she wrote stays there.
 *
 * @param place which of the page's forms it is about; empty where nothing is asked
 * @param title of the question, in a few words
 * @param words the question
 * @param written what she wrote, by field
 * @param meant what she may have meant, by field; empty where nobody can tell
 */
public record AskedBack(
        String place, String title, String words, Map<String, String> written, Map<String, String> meant) {

    static final AskedBack NOTHING = new AskedBack("", "", "", Map.of(), Map.of());

    public AskedBack {
        written = Map.copyOf(written);
        meant = Map.copyOf(meant);
    }

    static AskedBack about(String place, Context context, List<String> fields, RuntimeException e, Voice voice) {
        Map<String, String> written = new LinkedHashMap<>();
        fields.forEach(name -> written.put(name, PageContext.field(context, name)));
        Map<String, String> meant = new LinkedHashMap<>();
        String title = MakingWords.in(voice.language()).lookAgain();
        if (e instanceof MeasureQuestionException question) {
            title = question.title();
            if (!question.meant().isEmpty()) {
                meant.putAll(written);
                meant.putAll(question.meant());
            }
        }
        return new AskedBack(place, title, ErrorPages.upright(Refusal.of(e).in(voice)), written, meant);
    }

    public boolean isAt(String form) {
        return place.equals(form);
    }

    /** What she wrote in a field; empty where it is not asked about. */
    public String in(String field) {
        return written.getOrDefault(field, "");
    }

    /** What she may have meant in a field. */
    public String meantIn(String field) {
        return meant.getOrDefault(field, "");
    }
}
