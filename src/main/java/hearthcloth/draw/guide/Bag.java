package hearthcloth.draw.guide;

import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * One bag of a class or a season: what is in it and whose it is.
 *
 * @param number from 1, as its folder is called
 * @param name whose it is or what it is for
 * @param asked the gift it is for, in a few words; empty where it is for none
 * @param notes what to know before it is packed: that another is cut first, or that it is not quite what was asked for
 */
public record Bag(int number, String name, String asked, Plan plan, List<String> notes) {

    public Bag {
        notes = List.copyOf(notes);
    }

    /** {@code Bag 3, Anna}. */
    String title(Voice voice) {
        return voice.printing().bagTitle(Integer.toString(number), name);
    }
}
