package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Step;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.CutSoFar;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.OtherEdge;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.journal.BenchFact;
import hearthcloth.store.json.ClothDocument.Stage;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A maker who does at random what makers do, on several cloths over one heap, and after every change looks whether all of
 * it still tells the same story. Bench and shelf are changed by the same calls as by the pages; {@code bench().sewn()}
 * counts bars here.
 */
final class RandomMaker {

    static final Stash HEAP = Stashes.scraps(50, 3);
    private static final List<Plan> PLANS = Planned.plans(HEAP, 22, 3);
    private static final Budget STEPS = Budget.steps(300);

    private final Random random;
    private final UnaryOperator<Store> killed;
    private final Map<String, String> names = new TreeMap<>();
    private final Map<String, Set<String>> bars = new TreeMap<>();
    private Store store;
    private int kept;
    /** Which kind of change was made last. */
    private int last;

    /**
     * A maker in a workroom that is filled with {@link #HEAP}.
     *
     * @param killed the workroom as it is found after its program was killed
     */
    RandomMaker(Store store, Random random, UnaryOperator<Store> killed) {
        this.store = store;
        this.random = random;
        this.killed = killed;
        keep();
    }

    void work(int changes) {
        for (int i = 0; i < changes; i++) {
            double before = there();
            boolean mayGrow = change();
            assertThat(mayGrow || there() <= before + 1e-3)
                    .as("fabric comes from nowhere by change %d of kind %d", i, last)
                    .isTrue();
            laws();
            if (random.nextInt(8) == 0) {
                List<Object> was = everything();
                store = killed.apply(store);
                assertThat(everything()).as("after the program was killed").isEqualTo(was);
            }
        }
    }

    /** Does something; true where fabric may come by it. */
    private boolean change() {
        last = random.nextInt(19);
        switch (last) {
            case 0 -> {
                return receive();
            }
            case 1 -> keep();
            case 2, 3 -> one(Stage::isToCut).ifPresent(this::tick);
            case 4 -> one(stage -> stage == Stage.DESIGNED).ifPresent(this::cutShort);
            case 5, 16 -> one(Stage::isToCut).ifPresent(this::cut);
            case 17 -> one(Stage::isToCut).ifPresent(this::cutWrong);
            case 18 -> one(stage -> stage == Stage.DESIGNED).ifPresent(this::planAgain);
            case 6, 7, 8 -> one(stage -> stage == Stage.CUT).ifPresent(this::sew);
            case 9 -> one(stage -> stage == Stage.CUT).ifPresent(this::findShort);
            case 10 -> one(stage -> !stage.isToCut()).ifPresent(this::unpick);
            case 11 -> useUp();
            case 12 -> setAside();
            case 13 -> shelf();
            default -> {
                return turn();
            }
        }
        return false;
    }

    private Optional<SavedCloth> one(Predicate<Stage> stage) {
        List<SavedCloth> some = store.cloths().all().stream()
                .filter(cloth -> stage.test(cloth.document().life().stage())
                        && cloth.document().plan().isPresent())
                .toList();
        return some.isEmpty() ? Optional.empty() : Optional.of(some.get(random.nextInt(some.size())));
    }

    private static Plan plan(SavedCloth cloth) {
        return cloth.document().plan().orElseThrow();
    }

    private boolean receive() {
        Piece like = HEAP.pieces().get(random.nextInt(HEAP.pieces().size()));
        Piece piece = like.part(store.stash().nextPiece(), like.size());
        store.stash().edit(new StashEdit("received " + piece.id(), List.of(), List.of(piece)));
        return true;
    }

    private void keep() {
        Plan like = PLANS.get(random.nextInt(PLANS.size()));
        Design design = DesignEdits.settled(like, Order.ROUND);
        StashAtHand heap = store.atHand();
        Set<String> also = random.nextInt(3) == 0
                ? store.cloths().all().stream().map(SavedCloth::id).collect(Collectors.toSet())
                : Set.of();
        Stash free = heap.free(also);
        if (free.pieces().isEmpty() || names.size() > 3) {
            return;
        }
        if (new DesignFit(free, Ruler.EIGHTHS).fit(design, Sentence.itself("a cloth"), STEPS) instanceof DesignFit.Answer.Made made) {
            String id = "c" + kept++;
            store.cloths().keep(id, "Cloth " + id, ClothDocument.of(design, made.plan(), Purpose.NOTHING));
            names.put(id, "Cloth " + id);
            bars.put(id, barsOf(made.plan()));
        }
    }

    private void tick(SavedCloth cloth) {
        Set<String> ticked = cloth.document().bench().ticked();
        PieceCut cut = plan(cloth).cuts().get(random.nextInt(plan(cloth).cuts().size()));
        if (cut.past()) {
            return;
        }
        boolean made = random.nextInt(6) > 0;
        for (int i = 1; i <= cut.tree().cuts().size(); i++) {
            String key = cut.piece().id() + ":" + i;
            if (ticked.contains(key) != made) {
                store.cloths()
                        .happened(
                                cloth,
                                "cut " + i + " of piece " + cut.piece().id(),
                                new BenchFact.Cut(List.of(key), made));
                return;
            }
        }
    }

    private void cutShort(SavedCloth cloth) {
        Set<String> ticked = cloth.document().bench().ticked();
        PieceCut cut = plan(cloth).cuts().get(random.nextInt(plan(cloth).cuts().size()));
        Optional<String> patch = Miscut.next(plan(cloth), ticked, cut.piece().id());
        if (patch.isEmpty() || !store.atHand().canBeCut(cloth.id())) {
            return;
        }
        Size wanted = Objects.requireNonNull(plan(cloth).sources().get(patch.get()))
                .kept()
                .at()
                .size();
        Length less = Length.inches(1 + random.nextInt(8), 8);
        Size measured = random.nextBoolean()
                ? new Size(wanted.width().minus(less), wanted.height())
                : new Size(wanted.width(), wanted.height().minus(less));
        if (!measured.width().isPositive() || !measured.height().isPositive()) {
            return;
        }
        List<WayOn> ways = new MiscutWays(
                        Miscut.of(plan(cloth), ticked, patch.get(), measured),
                        cloth.document().design(),
                        store.atHand().freeFor(cloth.id()),
                        Ruler.EIGHTHS)
                .ways(STEPS, way -> {});
        if (!ways.isEmpty()) {
            WayOn way = ways.get(random.nextInt(ways.size()));
            sameNames(plan(cloth), way.plan());
            ClothDocument was = cloth.document();
            List<Piece> freed =
                    CutSoFar.freed(plan(cloth), way.plan(), store.stash().nextPiece());
            ClothDocument now = new ClothDocument(
                    way.design(),
                    Optional.of(way.plan()),
                    List.of(),
                    was.bench().withTicked(way.made()),
                    was.life());
            edited(cloth, "a patch cut short", now, List.of(), freed);
        }
    }

    private void edited(SavedCloth cloth, String label, ClothDocument now, List<Piece> gone, List<Piece> come) {
        store.asOneChange(label, () -> {
            if (!gone.isEmpty() || !come.isEmpty()) {
                store.stash().edit(new StashEdit(label, gone, come));
            }
            return store.cloths().save(cloth, label, now);
        });
    }

    /** Spoils a piece, or a part of it, in the middle of cutting; the rest is planned again. */
    private void cutWrong(SavedCloth cloth) {
        List<PieceCut> left =
                plan(cloth).cuts().stream().filter(cut -> !cut.past()).toList();
        if (left.isEmpty() || !store.atHand().canBeCut(cloth.id())) {
            return;
        }
        PieceCut wrong = left.get(random.nextInt(left.size()));
        Size half = new Size(
                wrong.piece().size().width(), wrong.piece().size().height().dividedBy(4, Rounding.DOWN));
        boolean untouched = cloth.document().bench().ticked().stream()
                .noneMatch(tick -> tick.startsWith(wrong.piece().id() + ":"));
        Optional<Size> real = untouched && random.nextBoolean() ? Optional.of(half) : Optional.empty();
        if (cloth.document().life().stage() == Stage.RECUT) {
            cutWrongLate(cloth, wrong.piece().id(), real);
            return;
        }
        MiscutRecovery slip = MiscutRecovery.of(
                plan(cloth),
                cloth.document().bench().ticked(),
                wrong.piece().id(),
                real,
                store.stash().nextPiece());
        ClothDocument was = cloth.document();
        DesignFit.Answer answer = slip.fit(
                plan(cloth),
                was.design(),
                slip.stash(store.atHand().freeFor(cloth.id())),
                Ruler.EIGHTHS,
                "again",
                STEPS);
        if (answer instanceof DesignFit.Answer.Made made) {
            ClothDocument now = new ClothDocument(
                    was.design(),
                    Optional.of(slip.story().told(made.plan())),
                    List.of(),
                    was.bench().withTicked(Set.of()),
                    was.life());
            edited(cloth, "a mistake in piece " + wrong.piece().id(), now, slip.gone(), slip.come(made.plan()));
        }
    }

    private void cutWrongLate(SavedCloth cloth, String wrong, Optional<Size> real) {
        RemainingPlan.Table table = table(cloth);
        LateMiscut slip = LateMiscut.of(plan(cloth), cloth.document().bench().ticked(), wrong, real, table.next());
        Design design = cloth.document().design();
        int bars = Math.min(
                cloth.document().bench().sewn(), design.layout().courses().size());
        if (slip.fit(bars, design, table, STEPS) instanceof RemainingPlan.Answer.Made made) {
            booked(cloth, "a mistake in piece " + wrong, design, made.resewn(), Optional.empty(), slip);
        }
    }

    /** Plans a cloth anew of which patches are cut already: they are fabric again. */
    private void planAgain(SavedCloth cloth) {
        MiscutRecovery cut = MiscutRecovery.of(plan(cloth), store.stash().nextPiece());
        ClothDocument was = cloth.document();
        Stash stash = cut.stash(store.atHand().freeFor(cloth.id()));
        if (new DesignFit(stash, Ruler.EIGHTHS).fit(was.design(), Sentence.itself("again"), STEPS)
                instanceof DesignFit.Answer.Made made) {
            ClothDocument now = new ClothDocument(
                    was.design(),
                    Optional.of(cut.story().told(made.plan())),
                    List.of(),
                    was.bench().withTicked(Set.of()),
                    was.life());
            edited(cloth, "planned again", now, List.of(), cut.come(made.plan()));
        }
    }

    /** A patch that lies where it lay keeps its name, where its bar has as many parts of the same sizes as before. */
    private static void sameNames(Plan before, Plan after) {
        Map<String, String> names = new TreeMap<>();
        before.sources().forEach((patch, source) -> names.put(place(source), patch));
        after.sources().forEach((patch, source) -> {
            String was = names.get(place(source));
            if (was != null && partsOf(before, was).equals(partsOf(after, patch))) {
                assertThat(patch).as("the name of a patch").isEqualTo(was);
            }
        });
    }

    private static String place(Plan.Source source) {
        return source.from().piece().id() + " " + source.kept().at();
    }

    /** Where the parts of the patch's bar lie, in no order. */
    private static Set<String> partsOf(Plan plan, String patch) {
        String bar = patch.replaceFirst("\\..*", "");
        return plan.sources().entrySet().stream()
                .filter(one -> one.getKey().replaceFirst("\\..*", "").equals(bar))
                .map(one -> bar + " " + place(one.getValue()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void cut(SavedCloth cloth) {
        if (store.atHand().canBeCut(cloth.id())) {
            ClothDocument was = cloth.document();
            store.asOneChange("cut " + cloth.name(), () -> {
                store.cloths().save(cloth, "cut", was.with(was.life().at(Stage.CUT)));
                return store.stash().cut("cut " + cloth.name(), plan(cloth));
            });
        }
    }

    private RemainingPlan.Table table(SavedCloth cloth) {
        return new RemainingPlan.Table(
                store.atHand().freeFor(cloth.id()), store.stash().nextPiece(), Ruler.EIGHTHS);
    }

    private void booked(
            SavedCloth cloth,
            String label,
            Design design,
            RemainingPlan.Resewn resewn,
            Optional<BenchFact> fact,
            LateMiscut slip) {
        List<Piece> come = new ArrayList<>(slip.come());
        come.addAll(resewn.come());
        store.asOneChange(label, () -> {
            SavedCloth now =
                    fact.map(one -> store.cloths().happened(cloth, label, one)).orElse(cloth);
            if (!slip.gone().isEmpty() || !come.isEmpty()) {
                store.stash().edit(new StashEdit(label, slip.gone(), come));
            }
            ClothDocument was = now.document();
            return store.cloths()
                    .save(
                            now,
                            label,
                            new ClothDocument(
                                    design,
                                    Optional.of(resewn.plan()),
                                    List.of(),
                                    was.bench(),
                                    was.life().at(resewn.cuts().isEmpty() ? Stage.CUT : Stage.RECUT)));
        });
    }

    private void booked(
            SavedCloth cloth, String label, Design design, RemainingPlan.Resewn resewn, Optional<BenchFact> fact) {
        booked(cloth, label, design, resewn, fact, new LateMiscut(resewn.plan(), List.of(), List.of()));
    }

    private static BenchFact.Sewn sewn(int step, String bar, BenchFact.@Nullable Measured measured) {
        return new BenchFact.Sewn(
                step, new BenchFact.Seam("seam", bar, ""), "2026-05-04T10:00:00Z", measured, bar.isEmpty());
    }

    private static List<Size> running(Plan plan) {
        return plan.cloth().steps().stream()
                .filter(step -> step.joinedBar().isEmpty())
                .map(Step::running)
                .toList();
    }

    /** Sews the next bar on, a little off, measures it and sews on as it is. */
    private void sew(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn() + 1;
        Design design = cloth.document().design();
        if (sewn > design.layout().courses().size()) {
            store.cloths().happened(cloth, "hemmed", sewn(sewn - 1, "", null));
            return;
        }
        Size should = running(plan(cloth)).get(sewn - 1);
        Length off = Length.inches(random.nextInt(5) - 2, 16);
        boolean upright = design.layout().slots().get(sewn - 1).place().side().isUpright();
        Size real = upright
                ? new Size(should.width().plus(off), should.height())
                : new Size(should.width(), should.height().plus(off));
        Design on = SewnCloth.measured(design, sewn, real).design();
        if (new RemainingPlan(plan(cloth), sewn, Map.of()).fit(on, table(cloth), STEPS)
                instanceof RemainingPlan.Answer.Made made) {
            BenchFact.Measured measured = upright
                    ? new BenchFact.Measured(should.width(), real.width(), List.of(real.width()), List.of())
                    : new BenchFact.Measured(should.height(), real.height(), List.of(), List.of(real.height()));
            String bar = design.layout().slots().get(sewn - 1).place().bar();
            booked(cloth, "sewed bar " + bar + " on", on, made.resewn(), Optional.of(sewn(sewn - 1, bar, measured)));
            Plan now = plan(store.cloths().find(cloth.id()).orElseThrow());
            assertThat(running(now).get(sewn - 1)).as("what was measured").isEqualTo(real);
            assertThat(now.cloth().finished())
                    .as("the size foretold")
                    .isEqualTo(on.layout().finished());
        }
    }

    private void findShort(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        Design design = cloth.document().design();
        if (sewn >= design.layout().courses().size()) {
            return;
        }
        Layout.Slot slot = design.layout().slots().get(sewn);
        if (random.nextInt(4) == 0 && sewn > 0) {
            String last = design.layout().slots().get(sewn - 1).place().bar();
            OtherEdge.of(design, plan(cloth), last, sewn).ifPresent(other -> {
                ClothDocument was = cloth.document();
                store.cloths()
                        .save(
                                cloth,
                                "bar " + last + " on the other side",
                                new ClothDocument(
                                        other.design(), Optional.of(other.plan()), List.of(), was.bench(), was.life()));
            });
            return;
        }
        String bar = slot.place().bar();
        Length cut = new RemainingPlan(plan(cloth), sewn, Map.of()).cutLength(bar);
        Length real = cut.minus(Length.inches(4 + random.nextInt(8), 4));
        try {
            List<ShortBar.Way> ways = new ShortBar(
                            new RemainingPlan(plan(cloth), sewn, Map.of(bar, real)), bar, design, table(cloth))
                    .ways(STEPS);
            if (!ways.isEmpty()) {
                ShortBar.Way way = ways.get(random.nextInt(ways.size()));
                booked(cloth, "bar " + bar + " too short", way.design(), way.resewn(), Optional.empty());
            }
        } catch (MeasureException e) {
            assertThat(e).hasMessageContainingAll("bar " + bar);
        }
    }

    private void unpick(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        if (sewn > 0) {
            boolean whole = cloth.document().life().stage() == Stage.SEWN;
            store.cloths()
                    .happened(
                            cloth,
                            "unpicked",
                            new BenchFact.Unpicked(random.nextInt(sewn), sewn, List.of("some"), whole));
        }
    }

    private Optional<Piece> anyPiece() {
        List<Piece> pieces = store.stash().whole().pieces();
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(random.nextInt(pieces.size())));
    }

    private void useUp() {
        anyPiece()
                .ifPresent(
                        piece -> store.stash().edit(new StashEdit("used up " + piece.id(), List.of(piece), List.of())));
    }

    private void setAside() {
        anyPiece().ifPresent(piece -> {
            boolean on = !store.stash().aside().contains(piece.id());
            store.stash().edit(StashEdit.aside("aside " + piece.id(), List.of(piece.id()), on));
        });
    }

    private void shelf() {
        List<SavedCloth> all = store.cloths().all();
        if (all.isEmpty()) {
            return;
        }
        SavedCloth cloth = all.get(random.nextInt(all.size()));
        if (random.nextInt(4) > 0) {
            store.cloths().rename(cloth.id(), cloth.name() + "'");
            names.put(cloth.id(), cloth.name() + "'");
        } else {
            store.cloths().remove(cloth.id());
            backAndForth(() -> store.cloths().undo(), () -> store.cloths().redo());
            store.cloths().undo();
        }
    }

    /** Undoes at one place or another; mostly redoes it again, and then nothing may be different. */
    private boolean turn() {
        List<SavedCloth> all = store.cloths().all();
        if (all.isEmpty() || random.nextInt(3) == 0) {
            backAndForth(() -> store.stash().undo(), () -> store.stash().redo());
            return true;
        }
        String id = all.get(random.nextInt(all.size())).id();
        if (random.nextInt(3) > 0) {
            backAndForth(() -> store.cloths().undo(id), () -> store.cloths().redo(id));
        } else {
            store.cloths().undo(id);
            store.cloths().all().forEach(cloth -> names.put(cloth.id(), cloth.name()));
        }
        return true;
    }

    private void backAndForth(
            java.util.function.Supplier<Optional<String>> undo, java.util.function.Supplier<Optional<String>> redo) {
        List<Object> before = everything();
        if (undo.get().isPresent()) {
            assertThat(redo.get()).isPresent();
        }
        assertThat(everything()).as("undone and redone").isEqualTo(before);
    }

    /** All that is kept. */
    private List<Object> everything() {
        List<Object> all = new ArrayList<>(List.of(
                store.stash().whole().pieces(),
                new TreeSet<>(store.stash().aside()),
                store.stash().nextPiece()));
        store.cloths().all().stream()
                .sorted(java.util.Comparator.comparing(SavedCloth::id))
                .forEach(cloth -> all.add(List.of(cloth.id(), cloth.name(), cloth.document())));
        return all;
    }

    /** All fabric in square millimetres, in the stash and in what is cut. */
    private double there() {
        double there = store.stash().whole().pieces().stream()
                .mapToDouble(Piece::areaMm2)
                .sum();
        for (SavedCloth cloth : store.cloths().all()) {
            there += plan(cloth).cuts().stream()
                    .filter(cut ->
                            cut.past() || !cloth.document().life().stage().isToCut())
                    .flatMap(cut -> cut.tree().kept().stream())
                    .mapToDouble(kept -> kept.at().size().areaMm2())
                    .sum();
        }
        return there;
    }

    private static Set<String> barsOf(Plan plan) {
        return plan.cloth().patches().stream()
                .map(patch -> patch.place().id().replaceFirst("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void laws() {
        assertThat(store.fault()).as("tables and journal").isEmpty();
        StashAtHand heap = store.atHand();
        Set<Piece> pieces = new HashSet<>(heap.stash().pieces());
        List<SavedCloth> cloths = store.cloths().all();
        for (SavedCloth cloth : cloths) {
            assertThat(cloth.name()).isEqualTo(names.get(cloth.id()));
            Plan plan = plan(cloth).checked();
            assertThat(barsOf(plan)).as("names of bars").isEqualTo(bars.get(cloth.id()));
            for (PieceCut cut : plan.cuts()) {
                assertThat(parts(cut.tree())).isCloseTo(cut.piece().areaMm2(), within(cut.piece()));
            }
            boolean toCut = cloth.document().life().stage().isToCut();
            assertThat(plan.cuts().stream().filter(cut -> cut.past() || !toCut).map(PieceCut::piece))
                    .as("cut, and not in the stash")
                    .noneMatch(pieces::contains);
            List<Piece> counted = plan.cuts().stream()
                    .filter(cut -> !cut.past())
                    .map(PieceCut::piece)
                    .toList();
            if (toCut) {
                boolean can = pieces.containsAll(counted) && counted.stream().noneMatch(heap::isAside);
                assertThat(heap.canBeCut(cloth.id())).isEqualTo(can);
                assertThat(can || !heap.warnings(cloth.id()).isEmpty()).isTrue();
            }
        }
        shared(heap, pieces, cloths);
    }

    private static org.assertj.core.data.Offset<Double> within(Piece piece) {
        return org.assertj.core.data.Offset.offset(1e-9 * piece.areaMm2());
    }

    private static double parts(CutTree tree) {
        return tree.kept().stream()
                        .mapToDouble(kept -> kept.at().size().areaMm2())
                        .sum()
                + tree.left().stream()
                        .mapToDouble(left -> left.size().areaMm2())
                        .sum();
    }

    /** A piece on which two cloths count is told at both. */
    private static void shared(StashAtHand heap, Set<Piece> pieces, List<SavedCloth> cloths) {
        for (SavedCloth one : cloths) {
            for (SavedCloth other : cloths) {
                boolean both = !one.id().equals(other.id())
                        && counted(one, pieces).stream().anyMatch(counted(other, pieces)::contains);
                if (both) {
                    assertThat(heap.warnings(one.id())).anyMatch(told -> told.startsWith(other.name() + " counts on"));
                }
            }
        }
    }

    private static Set<Piece> counted(SavedCloth cloth, Set<Piece> pieces) {
        return cloth.document().life().stage().isToCut()
                ? plan(cloth).cuts().stream()
                        .filter(cut -> !cut.past())
                        .map(PieceCut::piece)
                        .filter(pieces::contains)
                        .collect(Collectors.toSet())
                : Set.of();
    }
}
