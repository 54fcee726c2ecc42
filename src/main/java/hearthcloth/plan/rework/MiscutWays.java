package hearthcloth.plan.rework;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The ways on after a patch was cut too small, each planned through. What is cut is used as it is, what was only
 * planned is kept wherever it can be, and a bar changes its fabric only where nothing else does; then the way says so.
 * The same call gives the same ways.
 */
public final class MiscutWays {

    private final Miscut miscut;
    private final Design design;
    private final Stash stash;

    /**
     * Prepares the ways.
     *
     * @param design the design that was planned, with the fabrics each bar may be cut from
     * @param stash what there is, the pieces of the plan as they were before the first cut
     */
    public MiscutWays(Miscut miscut, Design design, Stash stash) {
        this.miscut = miscut;
        this.design = design;
        this.stash = stash;
    }

    /**
     * The ways on, best first; empty where there is none.
     *
     * @param budget ends the search for more of them once one is found
     * @param seen receives each way as it is found, on the calling thread
     */
    public List<WayOn> ways(Budget budget, Consumer<WayOn> seen) {
        List<WayOn> ways = new ArrayList<>();
        for (WayOn.Kind kind : WayOn.Kind.values()) {
            if (!ways.isEmpty() && budget.spent()) {
                break;
            }
            way(kind).ifPresent(way -> {
                ways.add(way);
                if (usesWhatIsCut(way.plan())) {
                    seen.accept(way);
                }
            });
        }
        if (ways.stream().anyMatch(way -> usesWhatIsCut(way.plan()))) {
            ways.removeIf(way -> !usesWhatIsCut(way.plan()));
        }
        ways.sort(Comparator.comparingInt((WayOn way) -> way.told().size() > 1 ? 1 : 0)
                .thenComparing(WayOn::kind));
        return List.copyOf(ways);
    }

    /** How short the patch is, in a sentence. */
    public Sentence told() {
        return WayWords.shortBy(miscut);
    }

    private Optional<WayOn> way(WayOn.Kind kind) {
        Design settled = DesignEdits.settled(miscut.plan(), design.order());
        return switch (kind) {
            case WIDER_NEIGHBOURS -> smaller(settled).flatMap(this::sameSize).flatMap(to -> planned(kind, to, true));
            case ANOTHER_PIECE -> planned(kind, settled, false).or(() -> planned(kind, open(settled), false));
            case JOINED_STRIP ->
                miscut.bar().equals("hearth")
                        ? Optional.empty()
                        : planned(kind, settled, true).filter(this::isJoined);
            case SMALLER_CLOTH -> smaller(settled).flatMap(to -> planned(kind, to, true));
        };
    }

    /** The settled sizes with the fabrics that the design allows. */
    private Design open(Design settled) {
        return new Design(settled.order(), settled.layout(), design.scheme(), settled.making(), settled.rules());
    }

    private boolean isJoined(WayOn way) {
        return way.plan().sources().entrySet().stream()
                .filter(source -> Miscut.bar(way.plan(), source.getKey()).equals(miscut.bar()))
                .anyMatch(source -> source.getValue()
                        .kept()
                        .at()
                        .equals(WayWords.place(miscut, source.getValue().from().piece())));
    }

    /** The design in which the patch that was cut too small is as large as it should be. */
    private Optional<Design> smaller(Design from) {
        DesignEdits edits = new DesignEdits(from);
        Size real = miscut.inCloth();
        if (miscut.bar().equals("hearth")) {
            return Optional.of(edits.hearth(real)).filter(to -> isPositive(to.layout()));
        }
        List<Layout.Slot> slots = from.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).place().bar().equals(miscut.bar())) {
                boolean upright = slots.get(i).place().side().isUpright();
                Length across = upright ? real.width() : real.height();
                return across.isLessThan(edits.barCut(i))
                        ? Optional.of(edits.bars(List.of(i), across)).filter(to -> isPositive(to.layout()))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static boolean isPositive(Layout layout) {
        return layout.hearth().width().isPositive()
                && layout.hearth().height().isPositive()
                && layout.courses().stream().allMatch(course -> course.width().isPositive());
    }

    /** The design with bars that are not cut yet made wider, so that the cloth is as large as it was to be. */
    private Optional<Design> sameSize(Design smaller) {
        Size wanted = miscut.plan().cloth().finished();
        Size now = smaller.layout().finished();
        return new DesignEdits(smaller)
                .widened(uncut(smaller, true), wanted.width().minus(now.width()))
                .flatMap(wide -> new DesignEdits(wide)
                        .widened(uncut(wide, false), wanted.height().minus(now.height())));
    }

    /** Whether a patch is cut out of its piece. */
    private boolean isCut(String patch) {
        PieceCut from =
                Objects.requireNonNull(miscut.plan().sources().get(patch)).from();
        return from.past() || (!from.tree().cuts().isEmpty() && miscut.made().containsAll(Miscut.path(from, patch)));
    }

    /** Whether each patch that is cut and good is used for its bar. A way that wastes one is offered only where all do. */
    private boolean usesWhatIsCut(Plan plan) {
        Set<String> used = new HashSet<>();
        plan.sources().keySet().forEach(patch -> used.add(origin(plan, patch)));
        return miscut.plan().sources().keySet().stream()
                .filter(patch -> isCut(patch) && !patch.equals(miscut.patch()))
                .allMatch(patch -> used.contains(origin(miscut.plan(), patch)));
    }

    private static String origin(Plan plan, String patch) {
        PieceCut from = Objects.requireNonNull(plan.sources().get(patch)).from();
        return Miscut.bar(plan, patch) + " " + from.piece().id();
    }

    private List<Integer> uncut(Design from, boolean across) {
        Set<String> begun = new HashSet<>(Set.of(miscut.bar()));
        miscut.plan().sources().keySet().stream()
                .filter(this::isCut)
                .forEach(patch -> begun.add(Miscut.bar(miscut.plan(), patch)));
        List<Integer> uncut = new ArrayList<>();
        List<Layout.Slot> slots = from.layout().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).place().side().isUpright() == across
                    && !begun.contains(slots.get(i).place().bar())
                    && !lengthens(slots, i, begun)) {
                uncut.add(i);
            }
        }
        return uncut;
    }

    /**
     * Whether bar {@code i} made wider would make a bar that is cut too short: one that is sewn across it before the
     * bar that came out narrow makes up for it.
     */
    private boolean lengthens(List<Layout.Slot> slots, int i, Set<String> cut) {
        for (int j = i + 1; j < slots.size(); j++) {
            Place.Bar later = slots.get(j).place();
            if (later.bar().equals(miscut.bar())) {
                return false;
            }
            if (later.side().isUpright() != slots.get(i).place().side().isUpright() && cut.contains(later.bar())) {
                return narrowAfter(slots, i);
            }
        }
        return false;
    }

    private boolean narrowAfter(List<Layout.Slot> slots, int i) {
        return slots.subList(i + 1, slots.size()).stream()
                .anyMatch(slot -> slot.place().bar().equals(miscut.bar()));
    }

    private Optional<WayOn> planned(WayOn.Kind kind, Design to, boolean used) {
        return planned(kind, to, new CutTable.Use(used, true))
                .or(() -> planned(kind, to, new CutTable.Use(used, false)));
    }

    /** Plans a way: a first search of a fixed number of steps, whatever the time. */
    private Optional<WayOn> planned(WayOn.Kind kind, Design to, CutTable.Use use) {
        CutTable table = new CutTable(miscut, to, stash, use);
        return new DesignFit(table.stash())
                .find(table.design(), miscut.plan().story().title(), Budget.steps(Long.MAX_VALUE))
                .map(found -> {
                    WholeStory story = new WholeStory(table);
                    Plan plan = story.of(found, miscut.plan().story());
                    return new WayOn(kind, to, plan, story.made(), WayWords.told(kind, miscut, plan));
                })
                .filter(way -> pastCuts(way.plan()) <= pastCuts(miscut.plan()));
    }

    /** Cuts made for earlier plans. A way that would cut one of their patches in two is none: nothing asks for such a cut. */
    private static int pastCuts(Plan plan) {
        return plan.cuts().stream()
                .filter(PieceCut::past)
                .mapToInt(cut -> cut.tree().cuts().size())
                .sum();
    }
}
