package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.CutSoFar;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.OtherEdge;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** What reality does to a maker's plans: cuts too small or wrong, bars too short or sewn on wrongly, fabric that is gone. */
final class Mishaps {

    private final MakersRoom room;

    Mishaps(MakersRoom room) {
        this.room = room;
    }

    /** The next patch of a piece comes out too small by up to an inch. */
    void cutShort(SavedCloth cloth) {
        Plan plan = Seen.plan(cloth);
        Set<String> ticked = cloth.document().bench().ticked();
        PieceCut cut = room.any(plan.cuts());
        Optional<String> patch = Miscut.next(plan, ticked, cut.piece().id());
        if (patch.isEmpty() || !room.seen().heap().canBeCut(cloth.id())) {
            return;
        }
        Size wanted = Objects.requireNonNull(plan.sources().get(patch.get()))
                .kept()
                .at()
                .size();
        Length less = Length.inches(1 + room.random.nextInt(8), 8);
        Size measured = room.random.nextBoolean()
                ? new Size(wanted.width().minus(less), wanted.height())
                : new Size(wanted.width(), wanted.height().minus(less));
        if (!measured.width().isPositive() || !measured.height().isPositive()) {
            return;
        }
        List<WayOn> ways = new MiscutWays(
                        Miscut.of(plan, ticked, patch.get(), measured),
                        cloth.document().design(),
                        room.seen().heap().freeFor(cloth.id()),
                        Ruler.EIGHTHS)
                .ways(MakersRoom.STEPS, way -> {});
        if (!ways.isEmpty()) {
            take(cloth, room.any(ways));
        }
    }

    private void take(SavedCloth cloth, WayOn way) {
        Plan plan = Seen.plan(cloth);
        OneStory.sameNames(plan, way.plan());
        Project was = cloth.document();
        List<Piece> freed = CutSoFar.freed(plan, way.plan(), room.seen().next());
        Project now = new Project(
                way.design(), Optional.of(way.plan()), List.of(), was.bench().withTicked(way.made()), was.life());
        room.edited(cloth, "a patch cut short", now, List.of(), freed);
    }

    /** Spoils a piece, or a part of it, in the middle of cutting; the rest is planned again. */
    void cutWrong(SavedCloth cloth) {
        List<PieceCut> left =
                Seen.plan(cloth).cuts().stream().filter(cut -> !cut.past()).toList();
        if (left.isEmpty() || !room.seen().heap().canBeCut(cloth.id())) {
            return;
        }
        Piece wrong = room.any(left).piece();
        Size half = new Size(wrong.size().width(), wrong.size().height().dividedBy(4, Rounding.DOWN));
        boolean untouched = cloth.document().bench().ticked().stream().noneMatch(tick -> tick.startsWith(wrong.id() + ":"));
        Optional<Size> real = untouched && room.random.nextBoolean() ? Optional.of(half) : Optional.empty();
        if (cloth.document().life().stage() == Stage.RECUT) {
            cutWrongLate(cloth, wrong.id(), real);
        } else {
            cutWrongEarly(cloth, wrong.id(), real);
        }
    }

    private void cutWrongEarly(SavedCloth cloth, String wrong, Optional<Size> real) {
        Plan plan = Seen.plan(cloth);
        Project was = cloth.document();
        MiscutRecovery slip =
                MiscutRecovery.of(plan, was.bench().ticked(), wrong, real, room.seen().next());
        DesignFit.Answer answer = slip.fit(
                plan,
                was.design(),
                slip.stash(room.seen().heap().freeFor(cloth.id())),
                Ruler.EIGHTHS,
                "again",
                MakersRoom.STEPS);
        if (answer instanceof DesignFit.Answer.Made made) {
            Project now = new Project(
                    was.design(),
                    Optional.of(slip.story().told(made.plan())),
                    List.of(),
                    was.bench().withTicked(Set.of()),
                    was.life());
            room.edited(cloth, "a mistake in piece " + wrong, now, slip.gone(), slip.come(made.plan()));
        }
    }

    private void cutWrongLate(SavedCloth cloth, String wrong, Optional<Size> real) {
        RemainingPlan.Table table = room.table(cloth);
        Project was = cloth.document();
        LateMiscut slip = LateMiscut.of(Seen.plan(cloth), was.bench().ticked(), wrong, real, table.next());
        int bars = Math.min(was.bench().sewn(), was.design().layout().courses().size());
        if (slip.fit(bars, was.design(), table, MakersRoom.STEPS) instanceof RemainingPlan.Answer.Made made) {
            MakersRoom.On on = new MakersRoom.On(was.design(), made.resewn(), slip);
            room.booked(cloth, "a mistake in piece " + wrong, on, Optional.empty());
        }
    }

    /** The next bar turns out one to three inches too short. */
    void findShort(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        Design design = cloth.document().design();
        if (sewn >= design.layout().courses().size()) {
            return;
        }
        Plan plan = Seen.plan(cloth);
        Layout.Slot slot = design.layout().slots().get(sewn);
        String bar = slot.place().bar();
        Length cut = new RemainingPlan(plan, sewn, Map.of()).cutLength(bar);
        Length real = cut.minus(Length.inches(4 + room.random.nextInt(8), 4));
        try {
            List<ShortBar.Way> ways = new ShortBar(
                            new RemainingPlan(plan, sewn, Map.of(bar, real)), bar, design, room.table(cloth))
                    .ways(MakersRoom.STEPS);
            if (!ways.isEmpty()) {
                ShortBar.Way way = room.any(ways);
                MakersRoom.On on = new MakersRoom.On(way.design(), way.resewn());
                room.booked(cloth, "bar " + bar + " too short", on, Optional.empty());
            }
        } catch (MeasureException e) {
            assertThat(e).hasMessageContainingAll("bar " + bar);
        }
    }

    /** The last bar lies the other side up, or on the other side of the work, and is left so. */
    void sewWrongly(SavedCloth cloth) {
        int sewn = cloth.document().bench().sewn();
        Design design = cloth.document().design();
        if (sewn == 0 || sewn > design.layout().courses().size()) {
            return;
        }
        String last = design.layout().slots().get(sewn - 1).place().bar();
        if (room.random.nextBoolean()) {
            OtherEdge.of(design, Seen.plan(cloth), last, sewn)
                    .ifPresent(other -> left(cloth, other.design(), other.plan(), "bar " + last + " on the other side"));
        } else {
            left(cloth, design, OtherEdge.otherSideUp(Seen.plan(cloth), last), "bar " + last + " the other side up");
        }
    }

    private void left(SavedCloth cloth, Design design, Plan plan, String label) {
        Project was = cloth.document();
        Project now = new Project(design, Optional.of(plan), List.of(), was.bench(), was.life());
        room.store().cloths().save(cloth, label, now);
    }

    Optional<Piece> anyPiece() {
        List<Piece> pieces = room.seen().heap().stash().pieces();
        return pieces.isEmpty() ? Optional.empty() : Optional.of(room.any(pieces));
    }

    void useUp() {
        anyPiece().ifPresent(piece -> room.store()
                .stash()
                .edit(new StashEdit("used up " + piece.id(), List.of(piece), List.of())));
    }
}
