package hearthcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.plan.rework.ShortBar;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.BarTooShort;
import hearthcloth.work.deed.LateSpoiled;
import hearthcloth.work.deed.PatchTooSmall;
import hearthcloth.work.deed.PieceSpoiled;
import hearthcloth.work.deed.SewingSoFar;
import hearthcloth.work.deed.SewnWrongly;
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
        PatchTooSmall.of(room.bench(cloth), cut.piece().id(), measured).ifPresent(slip -> {
            List<WayOn> ways = slip.ways(MakersRoom.STEPS);
            if (!ways.isEmpty()) {
                WayOn way = room.any(ways);
                OneStory.sameNames(plan, way.plan());
                room.does(cloth, slip.taken(way));
            }
        });
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
        boolean untouched =
                cloth.document().bench().ticked().stream().noneMatch(tick -> tick.startsWith(wrong.id() + ":"));
        Optional<Size> real = untouched && room.random.nextBoolean() ? Optional.of(half) : Optional.empty();
        if (cloth.document().life().stage() == Stage.RECUT) {
            if (new LateSpoiled(room.bench(cloth), wrong.id(), real).planned(MakersRoom.STEPS)
                    instanceof LateSpoiled.Outcome.Planned planned) {
                room.does(cloth, planned.deed());
            }
            return;
        }
        PieceSpoiled.Outcome outcome =
                new PieceSpoiled(room.bench(cloth), wrong.id(), real).planned("again", MakersRoom.STEPS);
        if (outcome.plan().isPresent()) {
            room.does(cloth, outcome.deed());
        }
    }

    /** The next bar turns out one to three inches too short. */
    void findShort(SavedCloth cloth) {
        SewingSoFar sewing = room.sewing(cloth);
        int bars = sewing.bars(cloth.document().bench().sewn());
        Design design = cloth.document().design();
        if (bars >= design.layout().courses().size()) {
            return;
        }
        String bar = design.layout().slots().get(bars).place().bar();
        Length cut = new RemainingPlan(Seen.plan(cloth), bars, Map.of()).cutLength(bar);
        Length real = cut.minus(Length.inches(4 + room.random.nextInt(8), 4));
        BarTooShort slip = new BarTooShort(room.bench(cloth), bars, bar, real);
        try {
            List<ShortBar.Way> ways = slip.ways(MakersRoom.STEPS);
            if (!ways.isEmpty()) {
                room.does(cloth, slip.taken(room.any(ways)));
            }
        } catch (MeasureException e) {
            assertThat(String.valueOf(e.getMessage())).containsIgnoringCase("bar " + bar);
        }
    }

    /** The last bar lies the other side up, or on the other side of the work, and is left so. */
    void sewWrongly(SavedCloth cloth) {
        SewingSoFar sewing = room.sewing(cloth);
        int bars = sewing.bars(cloth.document().bench().sewn());
        if (bars > 0) {
            String last = cloth.document()
                    .design()
                    .layout()
                    .slots()
                    .get(bars - 1)
                    .place()
                    .bar();
            SewnWrongly.Wrong wrong = room.random.nextBoolean() ? SewnWrongly.Wrong.EDGE : SewnWrongly.Wrong.FACE;
            new SewnWrongly(sewing, last, wrong).left().ifPresent(deed -> room.does(cloth, deed));
        }
    }

    Optional<Piece> anyPiece() {
        List<Piece> pieces = room.seen().heap().stash().pieces();
        return pieces.isEmpty() ? Optional.empty() : Optional.of(room.any(pieces));
    }

    void useUp() {
        anyPiece()
                .ifPresent(piece ->
                        room.store().stash().edit(new StashEdit("used up " + piece.id(), List.of(piece), List.of())));
    }
}
