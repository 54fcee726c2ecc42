package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.Step;
import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.AllCut;
import hearthcloth.work.deed.CutsMade;
import hearthcloth.work.deed.PlannedAgain;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.WorkMeasured;
import hearthcloth.work.design.DesignSettled;
import hearthcloth.work.design.SameDesign;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A maker who does at random what makers do, on several cloths over one heap, while {@link Mishaps} befall her; after every
 * change {@link OneStory} must hold. Bench and shelf are changed by the same calls as by the pages.
 */
final class RandomMaker {

    /** One kill to so many changes, on average. */
    private static final int CHANGES_PER_KILL = 14;

    private final MakersRoom room;
    private final Mishaps mishaps;
    private final UnaryOperator<Store> killed;
    private int kept;
    /** Which kind of change was made last. */
    private int last;

    /**
     * A maker in a workroom that is filled with {@link MakersRoom.Heap}.
     *
     * @param killed the workroom as it is found after its program was killed
     */
    RandomMaker(Store store, long seed, UnaryOperator<Store> killed) {
        this.room = new MakersRoom(store, seed);
        this.mishaps = new Mishaps(room);
        this.killed = killed;
        keep();
        room.look();
    }

    MakersRoom room() {
        return room;
    }

    Mishaps mishaps() {
        return mishaps;
    }

    void work(int changes) {
        for (int i = 0; i < changes; i++) {
            double before = room.seen().fabric();
            boolean mayGrow = change();
            Seen after = room.look();
            assertThat(mayGrow || after.fabric() <= before + 1e-3)
                    .as("fabric comes from nowhere by change %d of kind %d", i, last)
                    .isTrue();
            room.story.holds(after);
            if (room.random.nextInt(CHANGES_PER_KILL) == 0) {
                room.isNow(killed.apply(room.store()));
                assertThat(room.look().everything())
                        .as("after the program was killed")
                        .isEqualTo(after.everything());
            }
        }
    }

    /** Does something; true where fabric may come by it. */
    private boolean change() {
        last = room.random.nextInt(20);
        switch (last) {
            case 0 -> {
                return receive();
            }
            case 1 -> keep();
            case 2, 3 -> room.one(Stage::isToCut).ifPresent(this::tick);
            case 4 -> room.one(stage -> stage == Stage.DESIGNED).ifPresent(mishaps::cutShort);
            case 5, 16 -> room.one(Stage::isToCut).ifPresent(this::cut);
            case 17 -> room.one(Stage::isToCut).ifPresent(mishaps::cutWrong);
            case 18 -> room.one(stage -> stage == Stage.DESIGNED).ifPresent(this::planAgain);
            case 6, 7, 8 -> room.one(stage -> stage == Stage.CUT).ifPresent(this::sew);
            case 9 -> room.one(stage -> stage == Stage.CUT).ifPresent(mishaps::findShort);
            case 19 -> room.one(stage -> stage == Stage.CUT).ifPresent(mishaps::sewWrongly);
            case 10 -> room.one(stage -> !stage.isToCut()).ifPresent(this::unpick);
            case 11 -> mishaps.useUp();
            case 12 -> setAside();
            case 13 -> shelf();
            default -> {
                return turn();
            }
        }
        return false;
    }

    private boolean receive() {
        Piece like = room.any(room.heap().stash().pieces());
        Piece piece = like.part(room.seen().next(), like.size());
        room.store().stash().edit(new StashEdit("received " + piece.id(), List.of(), List.of(piece)));
        return true;
    }

    private void keep() {
        Plan like = room.any(room.heap().plans());
        Design design = DesignEdits.settled(like, Order.ROUND);
        Set<String> also = room.random.nextInt(3) == 0
                ? room.seen().cloths().stream().map(SavedCloth::id).collect(Collectors.toSet())
                : Set.of();
        Stash free = room.seen().heap().free(also);
        if (free.pieces().isEmpty() || room.story.cloths() >= room.heap().most()) {
            return;
        }
        if (new DesignFit(free).fit(design, Sentence.itself("a cloth"), MakersRoom.STEPS)
                instanceof DesignFit.Answer.Made made) {
            String id = "c" + room.seed() + "-" + kept++;
            room.store().cloths().keep(id, "Cloth " + id, Project.of(design, made.plan(), Purpose.NOTHING));
            room.story.begins(id, "Cloth " + id, made.plan());
        }
    }

    private void tick(SavedCloth cloth) {
        Set<String> ticked = new HashSet<>(cloth.document().bench().ticked());
        PieceCut cut = room.any(Seen.plan(cloth).cuts());
        if (cut.past()) {
            return;
        }
        boolean made = room.random.nextInt(6) > 0;
        for (int i = 1; i <= cut.tree().cuts().size(); i++) {
            String key = cut.piece().id() + ":" + i;
            if (made ? ticked.add(key) : ticked.remove(key)) {
                new CutsMade(cloth.document(), ticked).told().ifPresent(deed -> room.does(cloth, deed));
                return;
            }
        }
    }

    /** Plans a cloth anew of which patches are cut already: they are fabric again. */
    private void planAgain(SavedCloth cloth) {
        Project was = cloth.document();
        StashAtHand heap = room.seen().heap();
        PlannedAgain again = new PlannedAgain(
                was, heap.freeFor(cloth.id()), heap.stash(), room.seen().next());
        DesignSettled settled = new DesignSettled(was, cloth.name(), again.stash());
        Project now = room.random.nextBoolean()
                ? new SameDesign(settled, Ruler.EIGHTHS, "letter").again(() -> MakersRoom.STEPS)
                : settled.in(changed(was.design()), MakersRoom.STEPS);
        if (now.plan().isPresent()) {
            room.does(cloth, again.taken("planned again", now));
        }
    }

    /** A bar a mark wider or narrower. */
    private Design changed(Design design) {
        DesignEdits edits = new DesignEdits(design);
        int bar = room.random.nextInt(design.layout().slots().size());
        Length by = Length.inches(room.random.nextBoolean() ? 1 : -1, 8);
        return edits.bars(List.of(bar), edits.barCut(bar).plus(by));
    }

    void cut(SavedCloth cloth) {
        if (room.seen().heap().canBeCut(cloth.id())) {
            room.does(cloth, new AllCut(cloth.document(), room.seen().next()).of(cloth.name()));
        }
    }

    /** Does the steps before the next seam, sews that, a little off, measures both ends and goes on in one way or another. */
    void sew(SavedCloth cloth) {
        SavedCloth now = cloth;
        SewingSoFar sewing = room.sewing(now);
        int step = now.document().bench().sewn();
        while (step < sewing.steps().size()
                && SewingSoFar.bar(sewing.steps().get(step)).isEmpty()) {
            now = room.does(now, room.sewing(now).done(step, MakersRoom.NOW).orElseThrow());
            step++;
        }
        if (step < sewing.steps().size()) {
            measure(now, step);
        }
    }

    private void measure(SavedCloth cloth, int step) {
        SewingSoFar sewing = room.sewing(cloth);
        Size should = sewing.steps().get(step).task().check().orElseThrow().size();
        int bars = sewing.bars(step + 1);
        Length off = Length.inches(room.random.nextInt(5) - 2, 16);
        boolean upright = cloth.document()
                .design()
                .layout()
                .slots()
                .get(bars - 1)
                .place()
                .side()
                .isUpright();
        Size real = upright
                ? new Size(should.width().plus(off), should.height())
                : new Size(should.width(), should.height().plus(off));
        WorkMeasured measured = new WorkMeasured(
                room.bench(cloth),
                sewing,
                step,
                new WorkMeasured.Taken(
                        real,
                        upright ? List.of(real.width()) : List.of(),
                        upright ? List.of() : List.of(real.height(), real.height())));
        if (off.equals(Length.ZERO)) {
            room.does(cloth, measured.noted(MakersRoom.NOW));
            return;
        }
        List<WorkMeasured.Way> ways = List.copyOf(measured.ways().keySet());
        Design on =
                Objects.requireNonNull(measured.ways().get(room.random.nextInt(3) > 0 ? ways.get(0) : room.any(ways)));
        if (measured.fit(on, MakersRoom.STEPS) instanceof RemainingPlan.Answer.Made made) {
            Plan now = Seen.plan(room.does(cloth, measured.taken(on, made.resewn(), MakersRoom.NOW)));
            assertThat(running(now).get(bars - 1)).as("what was measured").isEqualTo(real);
            assertThat(now.cloth().finished())
                    .as("the size foretold")
                    .isEqualTo(on.layout().finished());
            room.story.mayHaveMore(cloth.id(), now);
        }
    }

    private static List<Size> running(Plan plan) {
        return plan.cloth().steps().stream()
                .filter(step -> step.joinedBar().isEmpty())
                .map(Step::running)
                .toList();
    }

    private void unpick(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        if (sewn > 0) {
            room.sewing(cloth).unpicked(room.random.nextInt(sewn)).ifPresent(deed -> room.does(cloth, deed));
        }
    }

    private void setAside() {
        mishaps.anyPiece().ifPresent(piece -> {
            boolean on = !room.seen().heap().isAside(piece);
            room.store().stash().edit(StashEdit.aside("aside " + piece.id(), List.of(piece.id()), on));
        });
    }

    private void shelf() {
        List<SavedCloth> all = room.seen().cloths();
        if (all.isEmpty()) {
            return;
        }
        SavedCloth cloth = room.any(all);
        ClothBook book = room.store().cloths();
        if (room.random.nextInt(4) > 0) {
            book.rename(cloth.id(), cloth.name() + "'");
            room.story.isCalled(cloth.id(), cloth.name() + "'");
        } else {
            book.remove(cloth.id());
            backAndForth(book::undo, book::redo);
            book.undo();
        }
    }

    /** Undoes at one place or another; mostly redoes it again, and then nothing may be different. */
    private boolean turn() {
        List<SavedCloth> all = room.seen().cloths();
        StashBook stash = room.store().stash();
        ClothBook book = room.store().cloths();
        if (all.isEmpty() || room.random.nextInt(3) == 0) {
            backAndForth(stash::undo, stash::redo);
            return true;
        }
        String id = room.any(all).id();
        if (room.random.nextInt(3) > 0) {
            backAndForth(() -> book.undo(id), () -> book.redo(id));
        } else {
            book.undo(id);
            room.look().cloths().forEach(cloth -> room.story.isCalled(cloth.id(), cloth.name()));
        }
        return true;
    }

    private void backAndForth(Supplier<Optional<String>> undo, Supplier<Optional<String>> redo) {
        List<Object> before = Seen.of(room.store()).everything();
        if (undo.get().isPresent()) {
            assertThat(redo.get()).isPresent();
        }
        assertThat(room.look().everything()).as("undone and redone").isEqualTo(before);
    }
}
