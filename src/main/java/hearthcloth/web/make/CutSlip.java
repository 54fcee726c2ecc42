package hearthcloth.web.make;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.CutSoFar;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.Miscut;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.plan.rework.MiscutWays;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** "I cut it wrong": the stash is put right as it now lies on the table, and the rest is planned again from it. */
record CutSlip(PageContext room, SavedCloth cloth, Plan plan) {

    private static final long ANSWER_WITHIN_MS = 1_500;
    private static final String LABEL = "planned again after a mistake";

    private Settings settings() {
        return ClothAsked.settings(room, cloth);
    }

    void mend(Context context) {
        String wrong = PageContext.field(context, "id");
        boolean late = cloth.document().life().stage() == Stage.RECUT;
        if (late && wrong.isEmpty()) {
            new LateSlip(room, cloth, plan).mend(context, wrong, Optional.empty());
            return;
        }
        Piece piece = plan.cuts().stream()
                .filter(cut -> !cut.past())
                .map(PieceCut::piece)
                .filter(each -> each.id().equals(wrong))
                .findFirst()
                .orElseThrow(() -> new StoreException("This piece is not in the plan any more; load the page again."));
        if (cloth.document().isFree()) {
            throw new MeasureException(
                    "a cloth of scraps is not planned again after a mistake: cut the patch from another scrap of at"
                            + " least its cut size, or look for proposals with what is left");
        }
        if (late) {
            new LateSlip(room, cloth, plan).mend(context, wrong, real(context, piece));
            return;
        }
        if (!PageContext.field(context, "short").isEmpty()) {
            goOn(context, piece);
            return;
        }
        MiscutRecovery slip = MiscutRecovery.of(
                plan,
                cloth.document().bench().ticked(),
                wrong,
                real(context, piece),
                room.store().stash().nextPiece());
        DesignFit.Answer answer = slip.fit(
                plan,
                cloth.document().design(),
                slip.stash(room.store().atHand().freeFor(cloth.id())),
                settings().ruler(),
                cloth.name(),
                TimeLimit.within(ANSWER_WITHIN_MS));
        Project now = now(slip, answer);
        List<Piece> come = answer instanceof DesignFit.Answer.Made made ? slip.come(made.plan()) : slip.come();
        room.store().asOneChange("a mistake in piece " + wrong, () -> {
            room.store().stash().edit(new StashEdit("a mistake in piece " + wrong, slip.gone(), come));
            return room.store().cloths().save(cloth, LABEL, now);
        });
        if (answer instanceof DesignFit.Answer.Made made) {
            PageContext.go(context, "/cut/" + cloth.id(), told(slip, made.plan()));
        } else {
            String why =
                    now.lacking().stream().findFirst().map(first -> " " + first).orElse("");
            PageContext.go(
                    context,
                    "/cloth/" + cloth.id(),
                    "You don't have enough fabric left." + why + " Change a bar or a width.");
        }
    }

    /** A patch that was cut too small: the ways on, each drawn in full; or the one she took. The stash keeps its pieces. */
    private void goOn(Context context, Piece piece) {
        Set<String> ticked = cloth.document().bench().ticked();
        String patch = Miscut.next(plan, ticked, piece.id())
                .orElseThrow(
                        () -> new MeasureException("every patch of this piece is cut; untick the cut that went wrong"));
        Size measured = real(context, piece)
                .orElseThrow(() -> new MeasureException("write what the patch measures now, across and along"));
        MiscutWays slip = new MiscutWays(
                Miscut.of(plan, ticked, patch, measured),
                cloth.document().design(),
                room.store().atHand().freeFor(cloth.id()),
                settings().ruler());
        List<WayOn> ways = slip.ways(TimeLimit.within(ANSWER_WITHIN_MS), way -> {});
        String asked = PageContext.field(context, "way");
        if (asked.isEmpty() && !ways.isEmpty()) {
            choose(context, piece, slip.told(), ways);
            return;
        }
        take(
                context,
                slip.told(),
                ways.stream()
                        .filter(one -> one.kind().name().equals(asked))
                        .findFirst()
                        .orElseThrow(
                                () -> new MeasureException(slip.told() + " No way on was found with what is there")));
    }

    private void choose(Context context, Piece piece, String told, List<WayOn> ways) {
        Ruler ruler = settings().ruler();
        Map<String, Length> pictures = room.store().swatches().across();
        List<CutPage.Way> drawn = ways.stream()
                .map(way -> {
                    Cloth after = way.plan().cloth();
                    String size = ruler.write(after.finished(), Rounding.NEAREST);
                    String picture = ClothDrawing.still(
                            after, Face.FRONT, new Swatches(way.plan().fabrics(), pictures), "The cloth then, " + size);
                    return new CutPage.Way(way.kind().name(), way.kind().words(), size, way.told(), picture);
                })
                .toList();
        CutPage.Gone gone =
                new CutPage.Gone(piece.id(), PageContext.field(context, "width"), PageContext.field(context, "length"));
        room.show(
                context,
                new CutPage.WaysOn(room.frame(context, "It came out too small", "Cut"), cloth, told, gone, drawn));
    }

    private void take(Context context, String told, WayOn way) {
        Project was = cloth.document();
        Project now = new Project(
                way.design(), Optional.of(way.plan()), List.of(), was.bench().withTicked(way.made()), was.life());
        List<Piece> freed =
                CutSoFar.freed(plan, way.plan(), room.store().stash().nextPiece());
        room.store().asOneChange(LABEL, () -> {
            if (!freed.isEmpty()) {
                room.store().stash().edit(new StashEdit(LABEL, List.of(), freed));
            }
            return room.store().cloths().save(cloth, LABEL, now);
        });
        PageContext.go(context, "/cut/" + cloth.id(), told + " " + String.join(" ", way.told()));
    }

    private Optional<Size> real(Context context, Piece piece) {
        String width = PageContext.field(context, "width");
        String length = PageContext.field(context, "length");
        if (width.isEmpty() && length.isEmpty()) {
            return Optional.empty();
        }
        Size real = new Size(
                Measures.length(width, settings().bare()),
                Measures.length(length, settings().bare()));
        boolean isThere = real.width().isPositive() && real.height().isPositive();
        if (!isThere || !piece.size().holds(real)) {
            throw new MeasureException("what is left cannot be larger than the piece was; check both sides");
        }
        return Optional.of(real);
    }

    private Project now(MiscutRecovery slip, DesignFit.Answer answer) {
        Project was = cloth.document();
        Project.Bench bench = was.bench().withTicked(Set.of());
        return answer instanceof DesignFit.Answer.Made made
                ? new Project(
                        was.design(), Optional.of(slip.story().told(made.plan())), List.of(), bench, was.life())
                : new Project(
                        was.design(), Optional.empty(), ((DesignFit.Answer.Lacking) answer).why(), bench, was.life());
    }

    private String told(MiscutRecovery slip, Plan now) {
        long cut = slip.patches().values().stream().mapToLong(List::size).sum();
        long used = slip.usedAsTheyAre(now);
        String kept = cut == 0
                ? ""
                : used == cut
                        ? " Every patch you have cut is used as it is."
                        : " Of " + cut + " patches you have cut, " + used + " are used as they are.";
        return "Planned again from what is left." + kept + joins(now);
    }

    private String joins(Plan now) {
        int more = now.figures().joins() - plan.figures().joins();
        if (more == 0) {
            return " It takes as many joins as before.";
        }
        String joins = Math.abs(more) == 1 ? " join " : " joins ";
        return " It takes " + Math.abs(more) + joins + (more > 0 ? "more." : "fewer.");
    }
}
