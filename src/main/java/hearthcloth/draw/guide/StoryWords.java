package hearthcloth.draw.guide;

import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a plan is called and good at, said to a reader. A plan keeps its title in English, as it was made; in another language
 * the titles of the plans of colour are said anew, and any other title stands as it is.
 */
public record StoryWords(Plan.Story story, Voice voice) {

    public String title() {
        return scheme().map(kind -> voice.printing().schemeTitle(kind.name())).orElse(story.title());
    }

    String goodAt() {
        return scheme().map(kind -> voice.printing().schemeGoodAt(kind.name())).orElse(story.goodAt());
    }

    /** The plan of colour; empty in English, where the plan's own words stand. */
    private Optional<Scheme.Kind> scheme() {
        return voice.language() == Language.ENGLISH
                ? Optional.empty()
                : Stream.of(Scheme.Kind.values())
                        .filter(kind -> kind.title().equals(story.title()))
                        .findFirst();
    }
}
