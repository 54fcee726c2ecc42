package hearthcloth.words.sentence;

import hearthcloth.plan.model.Plan;
import java.util.List;

/** Sentences of tests. */
public final class Told {

    private Told() {}

    public static List<Sentence> all(String... sentences) {
        return List.of(sentences).stream().map(Sentence::itself).toList();
    }

    public static Plan.Story story(String title, String goodAt) {
        return story(title, goodAt, List.of(), List.of());
    }

    public static Plan.Story story(String title, String goodAt, List<Sentence> chosen, List<Sentence> cautions) {
        return new Plan.Story(Sentence.itself(title), Sentence.itself(goodAt), chosen, cautions);
    }
}
