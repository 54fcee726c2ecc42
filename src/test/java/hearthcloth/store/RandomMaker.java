package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Step;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.OtherEdge;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.SewnCloth;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.json.ClothDocument;
import hearthcloth.store.json.ClothDocument.Stage;
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
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

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
                    .as("fabric comes from nowhere")
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
        switch (random.nextInt(16)) {
            case 0 -> {
                return receive();
            }
            case 1 -> keep();
            case 2, 3 -> one(Stage.DESIGNED).ifPresent(this::tick);
            case 4 -> one(Stage.DESIGNED).ifPresent(this::cutShort);
            case 5 -> one(Stage.DESIGNED).ifPresent(this::cut);
            case 6, 7, 8 -> one(Stage.CUT).ifPresent(this::sew);
            case 9 -> one(Stage.CUT).ifPresent(this::findShort);
            case 10 -> one(Stage.CUT).ifPresent(this::unpick);
            case 11 -> useUp();
            case 12 -> setAside();
            case 13 -> shelf();
            default -> {
                return turn();
            }
        }
        return false;
    }

    private Optional<SavedCloth> one(Stage stage) {
        List<SavedCloth> some = store.cloths().all().stream()
                .filter(cloth -> cloth.document().life().stage() == stage
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
        if (new DesignFit(free, Ruler.EIGHTHS).fit(design, "a cloth", STEPS) instanceof DesignFit.Answer.Made made) {
            String id = "c" + kept++;
            store.cloths().keep(id, "Cloth " + id, ClothDocument.of(design, made.plan(), Purpose.NOTHING));
            names.put(id, "Cloth " + id);
            bars.put(id, barsOf(made.plan()));
        }
    }

    private void tick(SavedCloth cloth) {
        Set<String> ticked = new HashSet<>(cloth.document().bench().ticked());
        PieceCut cut = plan(cloth).cuts().get(random.nextInt(plan(cloth).cuts().size()));
        for (int i = 1; i <= cut.tree().cuts().size(); i++) {
            if (ticked.add(cut.piece().id() + ":" + i)) {
                store.cloths()
                        .save(
                                cloth,
                                "cut " + i + " of piece " + cut.piece().id(),
                                cloth.document().with(cloth.document().bench().withTicked(ticked)));
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
            store.cloths()
                    .save(
                            cloth,
                            "a patch cut short",
                            new ClothDocument(
                                    way.design(),
                                    Optional.of(way.plan()),
                                    List.of(),
                                    was.bench().withTicked(way.made()),
                                    was.life()));
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

    private RemainingPlan.Table table() {
        return new RemainingPlan.Table(
                store.atHand().free(Set.of()), store.stash().nextPiece(), Ruler.EIGHTHS);
    }

    private void booked(SavedCloth cloth, String label, Design design, RemainingPlan.Resewn resewn, int sewn) {
        ClothDocument was = cloth.document();
        boolean done = sewn == design.layout().courses().size();
        ClothDocument now = new ClothDocument(
                design,
                Optional.of(resewn.plan()),
                List.of(),
                was.bench().withSewn(sewn),
                was.life().at(done ? Stage.SEWN : Stage.CUT));
        store.asOneChange(label, () -> {
            if (!resewn.gone().isEmpty() || !resewn.come().isEmpty()) {
                store.stash().edit(new StashEdit(label, resewn.gone(), resewn.come()));
            }
            return store.cloths().save(cloth, label, now);
        });
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
            return;
        }
        Size should = running(plan(cloth)).get(sewn - 1);
        Length off = Length.inches(random.nextInt(5) - 2, 16);
        boolean upright = design.layout().slots().get(sewn - 1).place().side().isUpright();
        Size real = upright
                ? new Size(should.width().plus(off), should.height())
                : new Size(should.width(), should.height().plus(off));
        Design on = SewnCloth.measured(design, sewn, real).design();
        if (new RemainingPlan(plan(cloth), sewn, Map.of()).fit(on, table(), STEPS)
                instanceof RemainingPlan.Answer.Made made) {
            booked(cloth, "sewed bar " + sewn + " on", on, made.resewn(), sewn);
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
                            new RemainingPlan(plan(cloth), sewn, Map.of(bar, real)), bar, design, table())
                    .ways(STEPS);
            if (!ways.isEmpty()) {
                ShortBar.Way way = ways.get(random.nextInt(ways.size()));
                booked(cloth, "bar " + bar + " too short", way.design(), way.resewn(), sewn);
            }
        } catch (MeasureException e) {
            assertThat(e).hasMessageContainingAll("bar " + bar);
        }
    }

    private void unpick(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        if (sewn > 0) {
            ClothDocument was = cloth.document();
            store.cloths().save(cloth, "unpicked", was.with(was.bench().withSewn(random.nextInt(sewn))));
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
            if (cloth.document().life().stage() != Stage.DESIGNED) {
                there += plan(cloth).cuts().stream()
                        .flatMap(cut -> cut.tree().kept().stream())
                        .mapToDouble(kept -> kept.at().size().areaMm2())
                        .sum();
            }
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
            List<Piece> counted = plan.cuts().stream().map(PieceCut::piece).toList();
            if (cloth.document().life().stage() == Stage.DESIGNED) {
                boolean can = pieces.containsAll(counted) && counted.stream().noneMatch(heap::isAside);
                assertThat(heap.canBeCut(cloth.id())).isEqualTo(can);
                assertThat(can || !heap.warnings(cloth.id()).isEmpty()).isTrue();
            } else {
                assertThat(counted).as("cut, and not in the stash").noneMatch(pieces::contains);
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
        return cloth.document().life().stage() == Stage.DESIGNED
                ? plan(cloth).cuts().stream()
                        .map(PieceCut::piece)
                        .filter(pieces::contains)
                        .collect(Collectors.toSet())
                : Set.of();
    }
}
