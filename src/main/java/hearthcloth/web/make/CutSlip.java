package hearthcloth.web.make;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.WayOn;
import hearthcloth.stash.Piece;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.Swatches;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.deed.PatchTooSmall;
import hearthcloth.work.deed.PieceSpoiled;
import hearthcloth.work.deed.Workbench;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** "I cut it wrong": the stash is put right as it now lies on the table, and the rest is planned again from it. */
record CutSlip(PageContext room, SavedCloth cloth, Plan plan) {

    private static final long ANSWER_WITHIN_MS = 1_500;

    private Settings settings() {
        return ClothAsked.settings(room, cloth);
    }

    private MakingWords words() {
        return MakingWords.in(room.language());
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
                .orElseThrow(() -> new StoreException(words().cutPieceGone()));
        if (cloth.document().isFree()) {
            throw new MeasureException(words().wrongScraps());
        }
        if (late) {
            new LateSlip(room, cloth, plan).mend(context, wrong, real(context, piece));
            return;
        }
        if (!PageContext.field(context, "short").isEmpty()) {
            goOn(context, piece);
            return;
        }
        planAgain(context, wrong, piece);
    }

    private void planAgain(Context context, String wrong, Piece piece) {
        PieceSpoiled.Outcome outcome = new PieceSpoiled(bench(), wrong, real(context, piece))
                .planned(cloth.name(), TimeLimit.within(ANSWER_WITHIN_MS));
        SavedCloth now =
                room.store().book(cloth, outcome.deed(), room.settings().voice());
        if (outcome.plan().isPresent()) {
            PageContext.go(
                    context, "/cut/" + cloth.id(), told(outcome, outcome.plan().get()));
        } else {
            String why = now.document().lacking().stream()
                    .findFirst()
                    .map(first -> first.in(room.settings().voice()))
                    .orElse("");
            PageContext.go(
                    context,
                    "/cloth/" + cloth.id(),
                    settings().voice().sentences(List.of(words().waysLacking(), why, words().wrongChange())));
        }
    }

    private Workbench bench() {
        return new SewWays.Desk(room, cloth).bench();
    }

    /** A patch that was cut too small: the ways on, each drawn in full; or the one she took. The stash keeps its pieces. */
    private void goOn(Context context, Piece piece) {
        Size measured = real(context, piece).orElseThrow(() -> new MeasureException(words().smallWrite()));
        PatchTooSmall slip = PatchTooSmall.of(bench(), piece.id(), measured)
                .orElseThrow(() -> new MeasureException(words().smallAllCut()));
        List<WayOn> ways = slip.ways(TimeLimit.within(ANSWER_WITHIN_MS));
        String asked = PageContext.field(context, "way");
        if (asked.isEmpty() && !ways.isEmpty()) {
            choose(context, piece, slip.told().in(settings().voice()), ways);
            return;
        }
        take(
                context,
                slip,
                ways.stream()
                        .filter(one -> one.kind().name().equals(asked))
                        .findFirst()
                        .orElseThrow(() -> new MeasureException(settings()
                                .voice()
                                .sentences(List.of(slip.told().in(settings().voice()), words().smallNoWay())))));
    }

    private void choose(Context context, Piece piece, String told, List<WayOn> ways) {
        Voice voice = settings().voice();
        Map<String, Length> pictures = room.store().swatches().across();
        List<CutPage.Way> drawn = ways.stream()
                .map(way -> {
                    Cloth after = way.plan().cloth();
                    String size = voice.write(after.finished(), Rounding.NEAREST);
                    String picture = ClothDrawing.still(
                            after, Face.FRONT, new Swatches(way.plan().fabrics(), pictures), words().waysPicture(size));
                    return new CutPage.Way(
                            way.kind().name(),
                            words().waysAfterCut(way.kind().name()),
                            size,
                            said(way.told()),
                            picture);
                })
                .toList();
        CutPage.Gone gone =
                new CutPage.Gone(piece.id(), PageContext.field(context, "width"), PageContext.field(context, "length"));
        room.show(
                context, new CutPage.WaysOn(room.frame(context, words().smallPage(), "Cut"), cloth, told, gone, drawn));
    }

    private List<String> said(List<Sentence> told) {
        return told.stream().map(one -> one.in(settings().voice())).toList();
    }

    private void take(Context context, PatchTooSmall slip, WayOn way) {
        room.store().book(cloth, slip.taken(way), room.settings().voice());
        PageContext.go(
                context,
                "/cut/" + cloth.id(),
                slip.told().then(Sentence.row(way.told())).in(settings().voice()));
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
            throw new MeasureException(words().smallLarger());
        }
        return Optional.of(real);
    }

    private String told(PieceSpoiled.Outcome outcome, Plan now) {
        int cut = outcome.cut();
        int used = outcome.used();
        String kept = cut == 0 ? "" : used == cut ? words().wrongAllUsed() : words().wrongSomeUsed(cut, used);
        return settings().voice().sentences(List.of(words().wrongPlanned(), kept, joins(now)));
    }

    private String joins(Plan now) {
        int more = now.figures().joins() - plan.figures().joins();
        if (more == 0) {
            return words().wrongSameJoins();
        }
        return more > 0 ? words().wrongMoreJoins(more) : words().wrongFewerJoins(-more);
    }
}
