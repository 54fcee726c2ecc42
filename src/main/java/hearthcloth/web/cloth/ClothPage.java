package hearthcloth.web.cloth;

import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Scheme;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.stash.Stash;
import hearthcloth.store.ClothBook;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.HeldPart;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Project;
import hearthcloth.work.design.ClothCopied;
import hearthcloth.work.design.ColoursAgain;
import hearthcloth.work.design.DesignSettled;
import hearthcloth.work.design.LockTurned;
import hearthcloth.work.design.OwnRuler;
import hearthcloth.work.design.SameDesign;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One cloth: everything about it can be changed, and every change is drawn and told at once. */
public final class ClothPage {

    /** A change is answered within this, whatever the search would still like to try. */
    static final long ANSWER_WITHIN_MS = 80;

    private static final long AGAIN_WITHIN_MS = 1_500;

    /** The page. */
    @PageView.Template("cloth.jte")
    public record View(PageFrame frame, ClothBench bench) implements PageView {}

    private final PageContext room;

    private ClothPage(PageContext room) {
        this.room = room;
    }

    public static void add(PageRoutes routes) {
        routes.of(ClothPage::new)
                .get("/cloth/{id}", ClothPage::show)
                .post("/cloth/{id}/change", ClothPage::change)
                .post("/cloth/{id}/again", ClothPage::again)
                .post("/cloth/{id}/replan", ClothPage::replan)
                .post("/cloth/{id}/lock", ClothPage::lock)
                .post("/cloth/{id}/undo", (page, context) -> page.turn(context, false))
                .post("/cloth/{id}/redo", (page, context) -> page.turn(context, true))
                .post("/cloth/{id}/name", ClothPage::rename)
                .post("/cloth/{id}/copy", ClothPage::copy);
    }

    private DesigningWords words() {
        return DesigningWords.in(room.language());
    }

    private ClothBook book() {
        return room.store().cloths();
    }

    private SavedCloth saved(Context context) {
        return new ClothAsked(room).cloth(context);
    }

    private ClothView view(Context context, SavedCloth saved) {
        String at = Objects.requireNonNullElse(asked(context, "at"), "").strip();
        return new ClothView(
                saved,
                new CutPatches(room, saved).stash(),
                room.store().swatches().across(),
                ClothAsked.settings(room, saved),
                Wished.of(room.store(), saved),
                at);
    }

    /** What an address asks, or the field of a form that carries it along. */
    private static @Nullable String asked(Context context, @Nullable String name) {
        if (name == null) {
            return null;
        }
        String inAddress = context.queryParam(name);
        return inAddress == null ? context.formParam(name) : inAddress;
    }

    private void show(Context context) {
        show(context, "", Optional.empty());
    }

    /** @param before the cloth before the change that is told */
    private void show(Context context, String said, Optional<ClothView> before) {
        ClothView view = view(context, saved(context));
        boolean part = PageContext.isPart(context);
        String id = view.saved().id();
        String look = Objects.requireNonNullElse(asked(context, "look"), "");
        ClothBench.Look large = ClothBench.Look.named(look);
        ClothBench bench = new ClothBench(
                view,
                large == ClothBench.Look.TIED && !view.made() ? ClothBench.Look.FLAT : large,
                TiedStage.of(view, large, name -> asked(context, name)),
                new ClothBench.History(
                        book().undoable(id).orElse(""), book().redoable(id).orElse("")),
                new ClothBench.Told(
                        part ? said : "",
                        warnings(view.saved()),
                        view.all().inShort(before.map(ClothView::all)),
                        room.token(),
                        HeldPart.by(context)));
        room.show(
                context,
                part ? bench : new View(room.frame(context, view.saved().name(), "Cloth"), bench));
    }

    /** Shows the cloth again after a change: the part alone to htmx, the whole page by going there otherwise. */
    private void answer(Context context, String said) {
        answer(context, said, Optional.empty());
    }

    private void answer(Context context, String said, Optional<ClothView> before) {
        if (PageContext.isPart(context)) {
            show(context, said, before);
        } else {
            String at = PageContext.field(context, "at");
            PageContext.go(
                    context, "/cloth/" + context.pathParam("id") + (at.matches("\\w+") ? "?at=" + at : ""), said);
        }
    }

    private void change(Context context) {
        if (StaleChangeException.isStale(context, saved(context))) {
            new ClothBeside(room, saved(context)).keep(context);
            return;
        }
        SavedCloth saved = current(context);
        ClothView before = view(context, saved);
        ClothChanges changes = new ClothChanges(
                before, before.stash(), before.settings().bare(), name -> PageContext.field(context, name));
        ClothChanges.Change change = changes.read();
        SavedCloth after = settle(saved, change.label(), change.design(), before.stash());
        answer(context, view(context, after).since(before), Optional.of(before));
    }

    /** The cloth as she saw it when she changed it; a page that is out of date is told so. */
    private SavedCloth current(Context context) {
        SavedCloth saved = saved(context);
        if (saved.document().life().stage() != Project.Stage.DESIGNED) {
            throw new StoreException(words().wrongIsCut());
        }
        if (saved.document().isFree()) {
            throw new StoreException(words().wrongNoBars());
        }
        StaleChangeException.check(room.language(), context, saved, "");
        return saved;
    }

    private SavedCloth settle(SavedCloth saved, String label, Design design, Stash stash) {
        return new CutPatches(room, saved)
                .save(
                        label,
                        new DesignSettled(saved.document(), saved.name(), stash)
                                .in(design, TimeLimit.within(ANSWER_WITHIN_MS)));
    }

    /** What she should know before she cuts it, a sentence each. */
    private List<String> warnings(SavedCloth saved) {
        List<String> warnings = new ArrayList<>(room.store().atHand().warnings(saved.id(), room.language()));
        OwnRuler ruler = new OwnRuler(saved.document(), room.settings().ruler());
        if (ruler.isOther()) {
            warnings.add(words().warnRuler(
                            ruler.isBegun() ? "yes" : "no", ruler.own().isMetric() ? "metric" : "inches"));
        }
        return warnings;
    }

    /** Colours planned again; what is locked stays. */
    private void again(Context context) {
        SavedCloth saved = current(context);
        ClothView before = view(context, saved);
        DesignFit.Wished wished = new DesignFit.Wished(
                Scheme.Kind.named(PageContext.field(context, "scheme")),
                Contrast.named(PageContext.field(context, "contrast")).orElse(Contrast.READS));
        Design other = new ColoursAgain(saved.document(), before.stash())
                .other(wished, (int) saved.version(), TimeLimit.within(AGAIN_WITHIN_MS))
                .orElseThrow(() -> new MeasureException(wished.scheme()
                        .map(kind -> words().wrongScheme(
                                        room.settings()
                                                .voice()
                                                .rooms()
                                                .planning()
                                                .schemeNeeds(kind.name()),
                                        room.settings()
                                                .voice()
                                                .rooms()
                                                .planning()
                                                .scheme(kind.name())))
                        .orElseGet(words()::wrongNoOther)));
        SavedCloth after = settle(saved, words().deedAgain(), other, before.stash());
        answer(context, view(context, after).since(before), Optional.of(before));
    }

    /** The same design, cut from what is in the stash now. */
    private void replan(Context context) {
        SavedCloth saved = current(context);
        CutPatches patches = new CutPatches(room, saved);
        Project planned = new SameDesign(
                        new DesignSettled(saved.document(), saved.name(), patches.stash()),
                        room.settings().ruler(),
                        room.settings().paper().word())
                .again(() -> TimeLimit.within(ANSWER_WITHIN_MS));
        SavedCloth after = patches.save(words().deedReplan(), planned);
        String said = after.document().plan().isPresent() ? words().saidPlanned() : words().saidLacking();
        answer(context, said);
    }

    private void lock(Context context) {
        SavedCloth saved = current(context);
        String at = PageContext.field(context, "at");
        LockTurned lock = new LockTurned(saved.document(), at);
        String label = words().deedLock(lock.isOn() ? "yes" : "no", words().place(at, at));
        room.store().book(saved, lock.told(label), room.settings().voice());
        answer(context, lock.isOn() ? words().saidLocked() : words().saidUnlocked());
    }

    private void turn(Context context, boolean forward) {
        SavedCloth saved = saved(context);
        StaleChangeException.check(room.language(), context, saved, "");
        String id = saved.id();
        Optional<String> label = forward ? book().redo(id) : book().undo(id);
        answer(
                context,
                label.map(done -> forward ? words().saidRedone(done) : words().saidUndone(done))
                        .orElseGet(words()::saidNothing));
    }

    private void rename(Context context) {
        String name = PageContext.field(context, "name");
        if (name.isEmpty() || name.length() > 80) {
            throw new MeasureException(words().wrongName());
        }
        SavedCloth saved = saved(context);
        String was = PageContext.field(context, "was");
        if (!was.isEmpty() && !was.equals(saved.name())) {
            String cloth = "/cloth/" + saved.id();
            throw new StaleChangeException(
                    words().staleRenamed(), words().staleCalled(saved.name()), cloth, "was", saved.name());
        }
        room.store().asOneChange(words().labelRenamed(name, saved.name()), () -> {
            book().rename(saved.id(), name);
            return saved;
        });
        String to =
                PageContext.field(context, "back").equals("/cloths") ? "/cloths" : "/cloth/" + context.pathParam("id");
        PageContext.go(context, to, words().saidCalled(name));
    }

    private void copy(Context context) {
        SavedCloth saved = saved(context);
        ClothCopied second = new ClothCopied(
                saved.document(),
                Wished.of(room.store(), saved),
                ClothAsked.settings(room, saved).paper().word());
        Project copy =
                second.like(room.store().atHand().free(Set.of()), saved.name(), TimeLimit.within(ANSWER_WITHIN_MS));
        String id = NewCloth.id(ExampleMark.isOn(saved.id()));
        book().keep(id, words().copyName(saved.name()), copy);
        PageContext.go(context, "/cloth/" + id, words().saidCopy());
    }
}
