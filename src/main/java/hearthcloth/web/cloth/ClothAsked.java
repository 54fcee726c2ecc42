package hearthcloth.web.cloth;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.choosing.ChoosingWords;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.design.OwnRuler;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The cloth that a page is asked for, or the choice of one where none is named. */
public record ClothAsked(PageContext room) {

    /** The page on which a cloth is chosen. */
    @PageView.Template("choose.jte")
    public record View(PageFrame frame, ClothCard.Choice choice) implements PageView {}

    /** The cloth in the address. */
    public SavedCloth cloth(Context context) {
        return room.store()
                .cloths()
                .find(context.pathParam("id"))
                .orElseThrow(() ->
                        new NotFoundResponse(DesigningWords.in(room.language()).wrongNone()));
    }

    /**
     * How this cloth is measured and printed, whatever she uses now: by the ruler whose marks it is cut to, on the paper it
     * was planned for.
     */
    public static Settings settings(PageContext room, SavedCloth cloth) {
        Settings now = room.settings();
        Optional<Paper> paper =
                Optional.ofNullable(cloth.document().life().paper()).flatMap(Paper::named);
        return now.as(new OwnRuler(cloth.document(), now.ruler()).own(), paper.orElse(now.paper()));
    }

    /** How it is cut, where the stash suffices for it. */
    public static Plan plan(SavedCloth cloth) {
        return cloth.document().plan().orElseThrow(() -> new StoreException(StoringSentences.lacking()));
    }

    /** Goes to the only planned cloth that will do, or shows all of them to choose from. */
    public void choose(Context context, String question, String stage, String to, Predicate<SavedCloth> willDo) {
        List<SavedCloth> cloths = room.store().cloths().all().stream()
                .filter(cloth -> cloth.document().plan().isPresent())
                .filter(willDo)
                .toList();
        if (cloths.size() == 1) {
            context.redirect(to + cloths.get(0).id());
            return;
        }
        String title = cloths.isEmpty() ? ChoosingWords.in(room.language()).chooseNone() : question;
        room.show(
                context,
                new View(room.frame(context, title, stage), new ClothCard.Choice(ClothCard.all(room, cloths), to)));
    }
}
