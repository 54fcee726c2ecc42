package hearthcloth.plan.patchwork;

import hearthcloth.cutstock.piecing.WishedCloth;
import hearthcloth.cutstock.piecing.tree.Pieced;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Setting;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.parameter.PatchworkParameters;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plans cloths of small log cabins, with or without scraps round them, in one setting or in several. */
final class BlockPlanning {

    private static final PatchworkParameters.Sizes SIZES =
            PatchworkParameters.standard().blocks();

    private final MarkedHeap heap;
    private final Patchwork patchwork;
    private final Blocks blocks;
    private final PatchworkEffort work;
    private final Ruler ruler;

    BlockPlanning(MarkedHeap heap, Patchwork patchwork, Blocks blocks, PatchworkEffort work) {
        this.heap = heap;
        this.patchwork = patchwork;
        this.blocks = blocks;
        this.work = work;
        this.ruler = heap.wish().preferences().ruler();
    }

    PlanOutcome outcome() {
        Optional<Size> wished = heap.wish().target().size();
        if (wished.isPresent()) {
            List<Plan> plans = plans(wished.get(), List.of());
            return plans.isEmpty() ? lacking(wished.get()) : new PlanOutcome.Proposals(plans);
        }
        return largest(Size.square(heap.finished((long) (SIZES.first() * Math.sqrt((double) heap.netArea())))))
                .<PlanOutcome>map(PlanOutcome.Proposals::new)
                .orElseGet(() -> lacking(Size.square(step())));
    }

    private Length step() {
        return ruler.isMetric() ? Length.cm(1) : Length.inches(1, 2);
    }

    /** The first that is found of sizes that become ever smaller. */
    private Optional<List<Plan>> largest(Size from) {
        Length step = step();
        double scale = 1;
        while (true) {
            Length width = step.times((long) (from.width().nm() * scale / step.nm()));
            Length height = step.times((long) (from.height().nm() * scale / step.nm()));
            if (heap.netMarks(width) < leastNet(blocks.across()) || heap.netMarks(height) < leastNet(blocks.down())) {
                return Optional.empty();
            }
            List<Plan> plans = plans(new Size(width, height), List.of(PlanningSentences.chosenSizeSteps()));
            if (!plans.isEmpty()) {
                return Optional.of(plans);
            }
            scale *= SIZES.smaller();
        }
    }

    /** The least net side that so many blocks could have. */
    private long leastNet(int count) {
        int bars = blocks.order().sides().size() / 2 * blocks.rounds();
        long least = heap.allowances().cutToShow(heap.terms(true).least())
                - heap.allowances().seam();
        return (bars + 1) * least * count;
    }

    private List<Plan> plans(Size size, List<Sentence> aboutSize) {
        List<Plan> plans = new ArrayList<>();
        List<Setting> settings = settings();
        int most = Math.max(1, heap.wish().preferences().proposals());
        for (int i = 0; i < settings.size() && plans.size() < most; i++) {
            if (!plans.isEmpty() && work.budget().spent()) {
                break;
            }
            Optional<Plan> plan = plan(size, settings.get(i), i, aboutSize);
            plan.ifPresent(plans::add);
            work.tell(i + 1, settings.size(), plans.size(), plan.filter(one -> plans.size() == 1));
            if (plan.isEmpty() && i == 0) {
                break;
            }
        }
        return plans;
    }

    private List<Setting> settings() {
        if (blocks.across() * blocks.down() == 1) {
            return List.of(blocks.setting().orElse(Setting.ALIKE));
        }
        return blocks.setting()
                .map(List::of)
                .orElse(List.of(
                        Setting.STRAIGHT_FURROW,
                        Setting.BARN_RAISING,
                        Setting.SUNSHINE_AND_SHADOW,
                        Setting.TURNED_AT_WILL,
                        Setting.ALIKE));
    }

    private Optional<Plan> plan(Size size, Setting setting, int number, List<Sentence> aboutSize) {
        long seed = heap.wish().preferences().seed() + number;
        long width = heap.netMarks(size.width());
        long height = heap.netMarks(size.height());
        double share = patchwork.scraps() ? SIZES.middle() : 1;
        long within = (long) (width * share);
        long high = (long) (height * share);
        if (within < leastNet(blocks.across()) || high < leastNet(blocks.down())) {
            return Optional.empty();
        }
        BlockTurns turns = new BlockTurns(blocks, setting, seed);
        return new BlockCloths(heap, blocks)
                .search(within, high, turns, work.trials(number > 0), seed)
                .flatMap(set -> patchwork.scraps()
                        ? bordered(size, new WishedCloth(within, high), set, seed)
                                .map(whole ->
                                        made(whole.tree(), size, shifted(set, whole.before()), set, setting, aboutSize))
                        : Optional.of(made(set.tree(), size, set.blocks(), set, setting, aboutSize)));
    }

    private Optional<ScrapBorder.Bordered> bordered(
            Size size, WishedCloth within, BlockCloths.SetTogether set, long seed) {
        WishedCloth whole = new WishedCloth(heap.netMarks(size.width()), heap.netMarks(size.height()));
        boolean offcuts = patchwork.cutting() != Patchwork.ScrapRule.AS_THEY_ARE;
        return new ScrapBorder(heap, set.tree()).around(whole, within, offcuts, work.share(false), seed);
    }

    /** The numbers of the blocks' patches where others come before them. */
    private static List<Set<Integer>> shifted(BlockCloths.SetTogether set, int before) {
        List<Set<Integer>> blocks = new ArrayList<>();
        for (Set<Integer> block : set.blocks()) {
            Set<Integer> numbers = new LinkedHashSet<>();
            block.forEach(number -> numbers.add(number + before));
            blocks.add(numbers);
        }
        return blocks;
    }

    private Plan made(
            Pieced tree,
            Size size,
            List<Set<Integer>> numbers,
            BlockCloths.SetTogether set,
            Setting setting,
            List<Sentence> aboutSize) {
        List<Sentence> chosen = new ArrayList<>(aboutSize);
        chosen.add(about());
        if (!set.toned()) {
            chosen.add(PlanningSentences.chosenMixed());
        }
        Plan plan = PatchworkPlans.of(
                tree, size, heap, numbers, new Plan.Story(title(setting), idea(setting), chosen, List.of()));
        return plan.told(plan.story().chosenLast(Meetings.sentence(plan.cloth())));
    }

    /** How many blocks, of how many rounds, laid how. */
    private Sentence about() {
        int count = blocks.across() * blocks.down();
        Sentence order = PlanningSentences.order(blocks.order().name());
        return count == 1
                ? PlanningSentences.chosenCabin(order, blocks.rounds())
                : PlanningSentences.chosenCabins(
                        Argument.number(blocks.across()),
                        Argument.number(count),
                        Argument.number(blocks.down()),
                        order,
                        blocks.rounds());
    }

    private Sentence title(Setting setting) {
        String scraps = patchwork.scraps() ? "yes" : "no";
        return blocks.across() * blocks.down() == 1
                ? PlanningSentences.cabinTitle(scraps)
                : PlanningSentences.cabinsTitle(
                        Argument.number(blocks.across()),
                        Argument.number(blocks.down()),
                        scraps,
                        PlanningSentences.setting(setting.name()));
    }

    private Sentence idea(Setting setting) {
        return blocks.across() * blocks.down() == 1 ? Sentence.none() : PlanningSentences.settingIdea(setting.name());
    }

    private PlanOutcome lacking(Size size) {
        List<Sentence> why = List.of(PlanningSentences.cabinsFew(
                Argument.number(blocks.across()),
                Argument.number(blocks.down()),
                blocks.rounds(),
                Argument.of(size, Rounding.NEAREST)));
        List<Plan> nearest = heap.wish().target().size().isPresent()
                ? largest(new Size(scaled(size.width()), scaled(size.height())))
                        .map(plans -> plans.subList(0, 1))
                        .orElse(List.of())
                : List.of();
        return new PlanOutcome.CannotMake(false, why, nearest);
    }

    private static Length scaled(Length length) {
        return new Length((long) (length.nm() * SIZES.smaller()));
    }
}
