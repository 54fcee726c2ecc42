package hearthcloth.guideline.fit;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.BarsRule;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineCheck;
import hearthcloth.guideline.HearthRule;
import hearthcloth.guideline.SizeRule;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.PlanProgress;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Fits a guideline to a heap. All rules are kept where the planner finds a cloth that keeps them; otherwise one rule is left
 * out, then more and more of them, the size last, until a cloth is found; and where none with a hearth is found, scraps are
 * laid together as they are. What a cloth does not keep is read off the cloth itself. The same heap, guideline, ask and
 * effort give the same cloths, as long as the budget does not end first.
 */
public final class GuidelinePlanner {

    private final Guideline guideline;
    private final Stash stash;
    private final Ask ask;
    private final GuidelineCheck check;

    private GuidelinePlanner(Guideline guideline, Stash stash, Ask ask) {
        this.guideline = guideline;
        this.stash = stash;
        this.ask = ask;
        this.check = new GuidelineCheck(guideline);
    }

    /**
     * Fits.
     *
     * @param effort how long the best drafts are searched, 1 and more
     * @param budget ends the search early, but not before a first cloth is found or found to be out of reach
     * @param seen receives how far the search has come, on the calling thread
     */
    public static Fitted fit(
            Guideline guideline, Stash stash, Ask ask, int effort, Budget budget, Consumer<PlanProgress> seen) {
        if (stash.pieces().isEmpty()) {
            return new Fitted(List.of(), List.of(PlanningSentences.heapEmpty()));
        }
        return new GuidelinePlanner(guideline, stash, ask).fitted(effort, budget, seen);
    }

    /** One cloth that keeps all rules, the first that a short search finds. */
    public static Optional<Plan> first(Guideline guideline, Stash stash, Ask ask) {
        RuleWish whole = new GuidelinePlanner(guideline, stash, ask).asked(Set.of());
        return Planner.first(stash, whole.wish(), whole.idea());
    }

    private Fitted fitted(int effort, Budget budget, Consumer<PlanProgress> seen) {
        RuleWish whole = asked(Set.of());
        List<Plan> plans = Planner.plans(stash, whole.wish(), whole.idea(), effort, budget, seen);
        if (!plans.isEmpty()) {
            return new Fitted(checked(plans), List.of());
        }
        for (Set<Bend.Rule> bent : ladder()) {
            RuleWish asked = asked(bent);
            Optional<Plan> first = Planner.first(stash, asked.wish(), asked.idea());
            if (first.isPresent()) {
                seen.accept(new PlanProgress(1, 1, 1, first));
                List<Plan> near = Planner.plans(stash, asked.wish(), asked.idea(), effort, budget, seen);
                return new Fitted(checked(near.isEmpty() ? List.of(first.get()) : near), why(whole));
            }
        }
        return scraps(effort, budget, seen, why(whole));
    }

    private List<Sentence> why(RuleWish whole) {
        List<Sentence> why = Planner.shortfall(stash, whole.wish(), whole.idea());
        return why.isEmpty() ? List.of(PlanningSentences.rulesNone()) : why;
    }

    private RuleWish asked(Set<Bend.Rule> bent) {
        return new RuleWish(guideline, stash, ask, bent);
    }

    /** The cloths with what each bends, those that bend less first. */
    private List<Fitted.Nearest> checked(List<Plan> plans) {
        List<Fitted.Nearest> cloths = new ArrayList<>();
        for (Plan plan : plans) {
            cloths.add(new Fitted.Nearest(
                    plan,
                    check.bends(plan.cloth(), plan.fabrics(), asked(Set.of()).middle()),
                    false));
        }
        cloths.sort(Comparator.comparingInt(cloth -> cloth.bends().size()));
        return cloths;
    }

    /** Sets of rules to leave out, the smaller first: one alone, then one more each time. */
    private List<Set<Bend.Rule>> ladder() {
        List<Bend.Rule> rules = new ArrayList<>();
        for (Bend.Rule rule : Bend.Rule.values()) {
            if (isSaid(rule)) {
                rules.add(rule);
            }
        }
        Set<Set<Bend.Rule>> ladder = new LinkedHashSet<>();
        rules.forEach(rule -> ladder.add(EnumSet.of(rule)));
        Set<Bend.Rule> more = EnumSet.noneOf(Bend.Rule.class);
        for (Bend.Rule rule : rules) {
            more.add(rule);
            ladder.add(EnumSet.copyOf(more));
            Set<Bend.Rule> smaller = EnumSet.copyOf(more);
            smaller.add(Bend.Rule.SIZE);
            ladder.add(smaller);
        }
        return List.copyOf(ladder);
    }

    private boolean isSaid(Bend.Rule rule) {
        return switch (rule) {
            case COLOURS -> !guideline.colours().ways().isEmpty();
            case MIDDLE -> asked(Set.of()).middle().isPresent();
            case BARS -> !(guideline.shape().bars() instanceof BarsRule.Open);
            case ROUNDS -> !guideline.shape().rounds().isOpen();
            case JOINS -> true;
            case HEARTH -> !(guideline.shape().hearth() instanceof HearthRule.Open);
            case ORDER -> guideline.shape().order().isPresent();
            case SIZE -> !(guideline.size() instanceof SizeRule.Open);
        };
    }

    private Fitted scraps(int effort, Budget budget, Consumer<PlanProgress> seen, List<Sentence> why) {
        Wish wish = new RuleWish(guideline, stash, ask, EnumSet.allOf(Bend.Rule.class)).wish();
        PlanOutcome outcome = PatchworkPlanner.plan(stash, wish, Patchwork.free(), effort, budget, seen);
        if (outcome instanceof PlanOutcome.Proposals proposals) {
            return new Fitted(
                    proposals.plans().stream()
                            .map(plan -> new Fitted.Nearest(plan, List.of(), true))
                            .toList(),
                    why);
        }
        List<Sentence> all = new ArrayList<>(why);
        ((PlanOutcome.CannotMake) outcome)
                .why().stream().filter(one -> !all.contains(one)).forEach(all::add);
        return new Fitted(List.of(), all);
    }
}
