package hearthcloth.draw.guide;

import hearthcloth.cloth.layout.Order;
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

    /** The title, in the reader's language where it is that of a plan of colour with the order of its bars. */
    public String title() {
        return scheme().map(this::titled).orElse(story.title());
    }

    private String titled(Scheme.Kind kind) {
        String title = voice.printing().schemeTitle(kind.name());
        String rest = story.title().substring(kind.title().length());
        return Stream.of(Order.values())
                .filter(order -> rest.equals(", " + order.phrase()))
                .map(order -> voice.printing().schemeOrdered(voice.printing().orderName(order.name()), title))
                .findFirst()
                .orElse(title + rest);
    }

    String goodAt() {
        return scheme().map(kind -> voice.printing().schemeGoodAt(kind.name())).orElse(story.goodAt());
    }

    /** The plan of colour; empty in English, where the plan's own words stand. */
    private Optional<Scheme.Kind> scheme() {
        return voice.language() == Language.ENGLISH
                ? Optional.empty()
                : Stream.of(Scheme.Kind.values())
                        .filter(kind -> story.title().startsWith(kind.title()))
                        .findFirst();
    }
}
