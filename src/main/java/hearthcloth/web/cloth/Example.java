package hearthcloth.web.cloth;

import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.gift.MeasuredSeams;
import hearthcloth.web.gift.WishForm;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Purpose;
import hearthcloth.work.design.ClothKept;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A stash to play with, clearly marked, gone with one action. Its pieces bear ids of their own. */
public final class Example {

    private static final long CLOTH_WITHIN_MS = 1_000;

    private final PageContext room;

    private Example(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(Example::new).post("/example", Example::lay).post("/example/away", Example::clear);
    }

    private void lay(Context context) {
        Store store = room.store();
        if (store.setting(ExampleMark.SETTING).isEmpty()) {
            List<Piece> pieces = pieces(store);
            store.stash().edit(new StashEdit(words().exampleLay(), List.of(), pieces));
            store.set(ExampleMark.SETTING, "laid");
            Purpose wished = new Purpose("box 12 x 9 x 4 in", "", "");
            Wished.keep(store, wished);
            cloth(new Stash(pieces), wished);
        }
        PageContext.go(context, "/stash", words().exampleLaid());
    }

    private DesigningWords words() {
        return DesigningWords.in(room.language());
    }

    /** A cloth from the example's own pieces, the first that is found. */
    private void cloth(Stash stash, Purpose wished) {
        Wish wish = WishForm.OPEN.wish(wished, MeasuredSeams.of(room.store()).usual(room.settings()), stash, 1);
        PlanOutcome outcome = Planner.plan(stash, wish, 1, TimeLimit.within(CLOTH_WITHIN_MS), seen -> {});
        if (outcome instanceof PlanOutcome.Proposals proposals) {
            Plan plan = proposals.plans().get(0);
            room.store()
                    .cloths()
                    .keep(
                            NewCloth.id(true),
                            words().exampleName(plan.story()
                                    .title()
                                    .in(room.settings().voice())),
                            new ClothKept(plan)
                                    .on(wished, room.settings().paper().word()));
        }
    }

    private void clear(Context context) {
        Store store = room.store();
        List<Piece> own = store.stash().whole().pieces().stream()
                .filter(piece -> ExampleMark.isOn(piece.id()))
                .toList();
        store.asOneChange(words().exampleAway(), () -> {
            if (!own.isEmpty()) {
                store.stash().edit(new StashEdit(words().exampleAway(), own, List.of()));
            }
            store.cloths().all().stream()
                    .filter(cloth -> ExampleMark.isOn(cloth.id()))
                    .forEach(cloth -> store.cloths().remove(cloth.id()));
            return own;
        });
        store.unset(ExampleMark.SETTING);
        Wished.keep(store, Purpose.NOTHING);
        PageContext.go(context, "/", words().exampleGone());
    }

    private List<Piece> pieces(Store store) {
        StashFile.Reading reading = StashFile.read(file(), Optional.of(Unit.INCH));
        Stash stash = ((StashFile.Read) reading).stash();
        int next = store.stash().nextPiece();
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : stash.pieces()) {
            pieces.add(new Piece(ExampleMark.MARK + next, piece.fabric(), piece.size(), piece.washed(), next));
            next++;
        }
        return pieces;
    }

    private static String file() {
        try (InputStream in = Example.class.getResourceAsStream("/example/scraps.csv")) {
            if (in == null) {
                throw new StoreException(StoringSentences.example());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new StoreException(StoringSentences.example(), e);
        }
    }
}
