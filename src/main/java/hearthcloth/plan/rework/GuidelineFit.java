package hearthcloth.plan.rework;

import hearthcloth.colour.Lab;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A design followed with the fabric of another stash: sizes, order and making up stay, each fabric is replaced by the
 * one nearest in colour, and where that cannot be cut the colours are planned anew for the same sizes.
 */
public record GuidelineFit(Design design) {

    /** The design in fabrics of the other stash, and whether it can be cut from that stash. */
    public record Followed(Design design, DesignFit.Answer answer) {}

    private record Pair(Fabric theirs, Fabric hers, double difference) {}

    /**
     * Follows the design.
     *
     * @param title the title of the plan
     * @param budget ends the search early
     * @throws IllegalArgumentException where the stash is empty
     */
    public Followed followed(Stash stash, String title, Budget budget) {
        DesignFit settling = new DesignFit(stash);
        Design alike = alike(stash.fabrics());
        DesignFit.Answer answer = settling.fit(alike, Sentence.itself(title), budget);
        if (answer instanceof DesignFit.Answer.Made) {
            return new Followed(alike, answer);
        }
        Optional<Design> other = settling.again(
                alike,
                new DesignFit.Stays(Set.of(), false),
                new DesignFit.Wished(Optional.empty(), Contrast.READS),
                0,
                budget);
        if (other.isPresent()
                && settling.fit(other.get(), Sentence.itself(title), budget) instanceof DesignFit.Answer.Made made) {
            return new Followed(other.get(), made);
        }
        return new Followed(alike, answer);
    }

    /**
     * Replaces fabrics, nearest pairs first by CIEDE2000; two fabrics are replaced by the same one only where the stash
     * has fewer fabrics than the design.
     */
    private Design alike(List<Fabric> hers) {
        if (hers.isEmpty()) {
            throw new IllegalArgumentException("there is no fabric to follow the design with");
        }
        List<Pair> pairs = new ArrayList<>();
        for (Fabric theirs : design.fabrics()) {
            for (Fabric mine : hers) {
                pairs.add(new Pair(theirs, mine, Lab.of(theirs.colour()).difference(Lab.of(mine.colour()))));
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::difference));
        Map<Fabric, Fabric> becomes = new HashMap<>();
        Set<Fabric> taken = new HashSet<>();
        while (becomes.size() < design.fabrics().size()) {
            for (Pair pair : pairs) {
                if (!becomes.containsKey(pair.theirs()) && taken.add(pair.hers())) {
                    becomes.put(pair.theirs(), pair.hers());
                }
            }
            taken.clear();
        }
        return in(becomes);
    }

    private Design in(Map<Fabric, Fabric> becomes) {
        Scheme scheme = design.scheme();
        return new Design(
                design.order(),
                design.layout(),
                new Scheme(
                        Scheme.Kind.OWN,
                        in(scheme.hearth(), becomes),
                        scheme.bars().stream().map(bar -> in(bar, becomes)).toList()),
                design.making(),
                design.rules());
    }

    private static List<Fabric> in(List<Fabric> fabrics, Map<Fabric, Fabric> becomes) {
        return fabrics.stream()
                .map(fabric -> becomes.getOrDefault(fabric, fabric))
                .distinct()
                .toList();
    }
}
