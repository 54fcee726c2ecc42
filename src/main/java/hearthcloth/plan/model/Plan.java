package hearthcloth.plan.model;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.stash.Fabric;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One complete proposal: a cloth and how each of its patches is cut from the stash. Immutable.
 *
 * @param story its title and why it is offered
 * @param cuts only the pieces that are used, in the order to cut them
 */
public record Plan(Story story, Cloth cloth, PiecingRules rules, List<PieceCut> cuts, Bound bound) {

    /**
     * The sentences that go with a proposal.
     *
     * @param title a short title, such as "Two halves"
     * @param goodAt one sentence on what it is good at
     * @param chosen what the planner chose where the wish was silent, one sentence each
     * @param cautions such as washed and unwashed cloth together
     */
    public record Story(Sentence title, Sentence goodAt, List<Sentence> chosen, List<Sentence> cautions) {
        public Story {
            chosen = List.copyOf(chosen);
            cautions = List.copyOf(cautions);
        }

        public Story goodAt(Sentence sentence) {
            return new Story(title, sentence, chosen, cautions);
        }

        /** With one more sentence on what it is good at. */
        public Story alsoGoodAt(Sentence sentence) {
            return goodAt(goodAt.then(sentence));
        }

        /** With one more sentence on what was chosen, at the end. */
        public Story chosenLast(Sentence sentence) {
            List<Sentence> more = new ArrayList<>(chosen);
            more.add(sentence);
            return new Story(title, goodAt, more, cautions);
        }

        public Story chosenFirst(Sentence sentence) {
            List<Sentence> more = new ArrayList<>(List.of(sentence));
            more.addAll(chosen);
            return new Story(title, goodAt, more, cautions);
        }
    }

    /** The piece that a patch is cut from, and its place on it. */
    public record Source(PieceCut from, CutTree.Kept kept) {}

    public Plan {
        cuts = List.copyOf(cuts);
    }

    /** The same plan with other words. */
    public Plan told(Story other) {
        return new Plan(other, cloth, rules, cuts, bound);
    }

    /** For each patch id, where the patch is cut from. */
    public Map<String, Source> sources() {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (PieceCut cut : cuts) {
            for (CutTree.Kept kept : cut.tree().kept()) {
                sources.put(kept.patch(), new Source(cut, kept));
            }
        }
        return sources;
    }

    /** For each patch id, the patch at its place with its cut size. */
    public Map<String, Laid> laid() {
        Map<String, Laid> laid = new LinkedHashMap<>();
        cloth.laid().forEach(patch -> laid.put(patch.patch().place().id(), patch));
        return laid;
    }

    /** The fabrics used, in the order their pieces are cut. */
    public List<Fabric> fabrics() {
        Map<String, Fabric> found = new LinkedHashMap<>();
        cuts.stream()
                .filter(cut -> !cut.tree().kept().isEmpty())
                .forEach(cut -> found.putIfAbsent(
                        cut.piece().fabric().name(), cut.piece().fabric()));
        return List.copyOf(found.values());
    }

    /**
     * This plan, if it can be cut and sewn; for plans that come from outside the planner.
     *
     * @throws IllegalStateException naming what does not fit
     */
    public Plan checked() {
        PlanCheck.require(this);
        return this;
    }

    public PlanFigures figures() {
        return PlanFigures.of(this);
    }
}
