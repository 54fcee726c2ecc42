package hearthcloth.web.gallery;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Names of proposals beside each other, of which no two are alike. A cloth is named by the fabric of its middle and what lies round it. */
final class ProposalNames {

    /** Longer names of fabrics are left out, since a card has room for two lines. Ours, no source. */
    private static final int LONGEST = 24;

    /** The form of a name that is true of every cloth with a middle. */
    private static final String ANY = "FALLS";

    /** Plans of colour that are named by two fabrics, so that these must differ. */
    private static final Set<String> OF_TWO = Set.of("FIELD", "FRAMES", "ALL", ANY, "OWN");

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
        String story = plan.story().title().in(voice).replaceFirst("[,、].*", "");
        List<String> own = new ArrayList<>(byFabric(plan));
        own.add(story);
        String title = own.get(0);
        own.add(words.nameSeams(ProposalOrder.seams(plan), title));
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

    /** What she sees first: the fabric of the middle and what lies round it. Blocks and scraps have no middle, and none. */
    private List<String> byFabric(Plan plan) {
        List<String> hearth = middle(plan).filter(fabric -> fabric.length() <= LONGEST).stream()
                .toList();
        List<String> round = round(plan);
        List<String> names = new ArrayList<>();
        for (String middle : hearth) {
            scheme(plan)
                    .filter(scheme -> !round.isEmpty()
                            && !(OF_TWO.contains(scheme) && round.get(0).equals(middle)))
                    .ifPresent(scheme -> names.add(words.nameOf(middle, round.get(0), scheme)));
            round.stream()
                    .filter(fabric -> !fabric.equals(middle))
                    .forEach(fabric -> names.add(words.nameOf(middle, fabric, ANY)));
        }
        return names.stream()
                .map(name -> Argument.capital(Argument.text(name)).said(voice))
                .toList();
    }

    /** The plan of colour its story tells; none where she chose by hand. */
    private Optional<String> scheme(Plan plan) {
        return plan.story().title().with().stream()
                .filter(part -> part instanceof Sentence told && told.address().equals("planning/scheme"))
                .map(part -> ((Sentence) part).with().get(0).said(voice))
                .findFirst();
    }

    private static Optional<String> middle(Plan plan) {
        return plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(Patch::fabric)
                .findFirst();
    }

    /** The fabrics outside its middle, that which covers most first; of two that cover as much the first by name. */
    private static List<String> round(Plan plan) {
        Map<String, Double> covered = new TreeMap<>();
        plan.cloth().patches().stream()
                .filter(patch -> !(patch.place() instanceof Place.Hearth))
                .filter(patch -> patch.fabric().length() <= LONGEST)
                .forEach(patch -> covered.merge(patch.fabric(), area(patch), Double::sum));
        return covered.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static double area(Patch patch) {
        return (double) patch.size().width().nm() * patch.size().height().nm();
    }
}
