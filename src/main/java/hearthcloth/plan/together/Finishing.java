package hearthcloth.plan.together;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.patchwork.PatchworkPlanner;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says what cloths lack that could not be made, offers them the nearest, and gives leftovers names a maker can write down. */
final class Finishing {

    private static final int LETTERS = 26;

    private final List<Asked> asked;
    private final PlanningTogether.Effort effort;
    private final Fairness fairness;
    private final Map<Integer, PlanOutcome.CannotMake> shortages = new LinkedHashMap<>();
    private Allotment allotment;

    Finishing(Allotment allotment, List<Asked> asked, PlanningTogether.Effort effort) {
        this.allotment = allotment;
        this.asked = asked;
        this.effort = effort;
        this.fairness = Fairness.of(allotment, asked.size());
    }

    Together together(Optional<Fairness> inTurn, int bound) {
        for (int cloth = 0; cloth < asked.size(); cloth++) {
            if (allotment.made(cloth).isEmpty()) {
                lacking(cloth);
            }
        }
        List<Leftover> handed = allotment.handedOn();
        Map<String, String> names = names(handed);
        List<Together.Part> parts = new ArrayList<>();
        for (int cloth = 0; cloth < asked.size(); cloth++) {
            Optional<Plan> plan = allotment.made(cloth).map(made -> renamed(made.plan(), names));
            parts.add(new Together.Part(asked.get(cloth), plan, Optional.ofNullable(shortages.get(cloth))));
        }
        List<Leftover> leftovers = handed.stream()
                .map(left -> new Leftover(named(left.part(), names), named(left.of(), names), left.by(), left.at()))
                .toList();
        Allotment wished = allotment.without(shortages.keySet());
        List<Purchase> shopping = new Shopping(asked, effort.seed()).of(wished, List.copyOf(shortages.keySet()));
        List<Integer> order = List.copyOf(allotment.made().keySet());
        return new Together(parts, order, leftovers, shopping, new Together.Measure(found(), inTurn, bound));
    }

    /** How fair it is with what was found at the very end. */
    private Fairness found() {
        return shortages.size() < fairness.lacking()
                ? Fairness.of(allotment.without(shortages.keySet()), asked.size())
                : fairness;
    }

    /** Asks the planner once more what is short, and gives the cloth the nearest that what is left makes. */
    private void lacking(int cloth) {
        Asked one = asked.get(cloth);
        Stash left = new Stash(allotment.free());
        PlanOutcome outcome = one.patchwork()
                .map(patchwork -> PatchworkPlanner.plan(left, one.wish(), patchwork, 1, effort.budget(), told -> {}))
                .orElseGet(() -> Planner.plan(left, one.wish(), 1, effort.budget(), told -> {}));
        if (outcome instanceof PlanOutcome.CannotMake cannot) {
            shortages.put(cloth, cannot);
            cannot.nearest().stream().findFirst().ifPresent(plan -> add(cloth, plan));
        } else {
            add(cloth, ((PlanOutcome.Proposals) outcome).plans().get(0));
        }
    }

    private void add(int cloth, Plan plan) {
        allotment = allotment.with(cloth, Made.of(plan));
    }

    /** Leftovers are called after the piece of the heap they come from: 7a, 7b. */
    private static Map<String, String> names(List<Leftover> handed) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Leftover left : handed) {
            String root = left.part().id().replaceFirst("/.*", "");
            int number = counts.merge(root, 1, Integer::sum);
            names.put(left.part().id(), root + letters(number));
        }
        return names;
    }

    private static String letters(int number) {
        String letter = String.valueOf((char) ('a' + (number - 1) % LETTERS));
        return number > LETTERS ? letters((number - 1) / LETTERS) + letter : letter;
    }

    private static Plan renamed(Plan plan, Map<String, String> names) {
        List<PieceCut> cuts = plan.cuts().stream()
                .map(cut -> new PieceCut(named(cut.piece(), names), cut.tree()))
                .toList();
        return new Plan(plan.story(), plan.cloth(), plan.rules(), cuts, plan.bound());
    }

    private static Piece named(Piece piece, Map<String, String> names) {
        String name = names.getOrDefault(piece.id(), piece.id());
        return new Piece(name, piece.fabric(), piece.size(), piece.washed(), piece.row());
    }
}
