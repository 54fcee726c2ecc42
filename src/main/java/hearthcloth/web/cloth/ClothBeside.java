package hearthcloth.web.cloth;

import hearthcloth.stash.Stash;
import hearthcloth.store.ClothBook;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Project;
import hearthcloth.work.design.ClothCopied;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/**
 * A change made on a state of a cloth that another window has overtaken: it is made to that state and kept beside the
 * cloth as one of its own, so that both windows' work is there to choose from.
 *
 * @param now the cloth as the other window left it
 */
record ClothBeside(PageContext room, SavedCloth now) {

    void keep(Context context) {
        ClothBook book = room.store().cloths();
        DesigningWords words = DesigningWords.in(room.language());
        String version = PageContext.field(context, "version");
        SavedCloth seen = (version.matches("\\d{1,18}")
                        ? book.as(now.id(), Long.parseLong(version))
                        : Optional.<SavedCloth>empty())
                .orElseThrow(() -> new StoreException(words.besideOld()));
        Settings settings = ClothAsked.settings(room, seen);
        Stash stash = room.store().atHand().freeFor(now.id());
        ClothView view = new ClothView(
                seen, stash, Map.of(), settings, Wished.of(room.store(), seen), PageContext.field(context, "at"));
        ClothChanges.Change change =
                new ClothChanges(view, stash, settings.bare(), name -> PageContext.field(context, name)).read();
        Project hers = new ClothCopied(
                        seen.document(),
                        Wished.of(room.store(), seen),
                        settings.paper().word())
                .in(change.design(), stash, seen.name(), TimeLimit.within(ClothPage.ANSWER_WITHIN_MS));
        String id = NewCloth.id(ExampleMark.isOn(now.id()));
        book.keep(id, words.besideName(change.label(), now.name()), hers);
        PageContext.go(
                context, "/cloths/compare?c=" + now.id() + "&c=" + id, words.besideSaid(change.label(), now.name()));
    }
}
