package hearthcloth.web.gallery;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of proposals beside each other, of which no two are alike: what one has of its own is added to a second. */
final class ProposalNames {

    private final Voice voice;
    private final ChoosingWords words;
    private final Set<String> given = new HashSet<>();

    private ProposalNames(Set<String> taken, Voice voice) {
        this.voice = voice;
        this.words = ChoosingWords.in(voice.language());
        given.addAll(taken);
    }

    /** One for each plan; none is among {@code taken}, the names of cloths she has. */
    static List<String> of(Map<String, Plan> plans, Set<String> taken, Voice voice) {
        ProposalNames names = new ProposalNames(taken, voice);
        List<String> all = new ArrayList<>();
        plans.values().forEach(plan -> all.add(names.name(plan)));
        return all;
    }

    private String name(Plan plan) {
        String title = plan.story().title().in(voice).replaceFirst("[,、].*", "");
        List<String> own = new ArrayList<>(List.of(title));
        middle(plan).ifPresent(fabric -> own.add(words.nameRound(fabric, title)));
        int seams = ProposalOrder.seams(plan);
        own.add(words.nameSeams(seams, title));
        middle(plan).ifPresent(fabric -> own.add(words.nameSeams(seams, words.nameRound(fabric, title))));
        for (String name : own) {
            if (given.add(name)) {
                return name;
            }
        }
        int number = 2;
        while (!given.add(words.nameNumber(String.valueOf(number), title))) {
            number++;
        }
        return words.nameNumber(String.valueOf(number), title);
    }

    private static java.util.Optional<String> middle(Plan plan) {
        return plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(Patch::fabric)
                .findFirst();
    }
}
