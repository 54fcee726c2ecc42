package hearthcloth.web.gallery;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.plan.model.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of proposals beside each other, of which no two are alike: what one has of its own is added to a second. */
final class ProposalNames {

    private final Set<String> given = new HashSet<>();

    private ProposalNames(Set<String> taken) {
        given.addAll(taken);
    }

    /** One for each plan; none is among {@code taken}, the names of cloths she has. */
    static List<String> of(Map<String, Plan> plans, Set<String> taken) {
        ProposalNames names = new ProposalNames(taken);
        List<String> all = new ArrayList<>();
        plans.values().forEach(plan -> all.add(names.name(plan)));
        return all;
    }

    private String name(Plan plan) {
        String title = plan.story().title().english().replaceFirst(",.*", "");
        List<String> own = new ArrayList<>(List.of(title));
        middle(plan).ifPresent(fabric -> own.add(title + " round " + fabric));
        int seams = ProposalOrder.seams(plan);
        own.add(title + ", " + (seams == 1 ? "1 seam" : seams + " seams"));
        middle(plan).ifPresent(fabric -> own.add(title + " round " + fabric + ", " + seams + " seams"));
        for (String name : own) {
            if (given.add(name)) {
                return name;
            }
        }
        int number = 2;
        while (!given.add(title + " " + number)) {
            number++;
        }
        return title + " " + number;
    }

    private static java.util.Optional<String> middle(Plan plan) {
        return plan.cloth().patches().stream()
                .filter(patch -> patch.place() instanceof Place.Hearth)
                .map(Patch::fabric)
                .findFirst();
    }
}
