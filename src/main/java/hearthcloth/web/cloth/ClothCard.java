package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.Language;
import hearthcloth.words.keeping.KeepingWords;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import hearthcloth.work.StashAtHand;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One cloth on the shelf, to choose it by.
 *
 * @param size finished, in her unit
 * @param standing how far it has come, and what is amiss with that
 */
public record ClothCard(
        SavedCloth saved,
        Pictures pictures,
        String size,
        Standing standing,
        List<ClothFigures.Line> figures,
        Language language) {

    /**
     * How it looks.
     *
     * @param front and {@code back} as SVG
     * @param photograph address of her photograph of it; empty where she took none
     */
    public record Pictures(String front, String back, String photograph) {}

    /**
     * How it stands.
     *
     * @param stage how far it has come, in a word
     * @param amiss what she should know before she cuts it, a sentence each
     */
    public record Standing(String stage, List<String> amiss) {
        public Standing {
            amiss = List.copyOf(amiss);
        }
    }

    /**
     * Cloths to choose one of.
     *
     * @param to where each leads, before its id
     */
    public record Choice(List<ClothCard> cards, String to) {}

    /** Cloths as they stand on the shelf, to choose one of them. */
    public static List<ClothCard> all(PageContext room, List<SavedCloth> cloths) {
        Map<String, Length> pictures = room.store().swatches().across();
        Map<String, String> kept = room.store().portraits().kept();
        StashAtHand heap = room.store().atHand();
        Language language = room.language();
        return cloths.stream()
                .map(saved -> of(
                        room,
                        saved,
                        pictures,
                        photograph(saved.id(), kept),
                        new Standing(
                                KeepingWords.in(language)
                                        .stage(saved.document().life().stage().name()),
                                heap.warnings(saved.id(), language))))
                .toList();
    }

    /**
     * Where the photograph of a cloth is found; empty where there is none.
     *
     * @param kept when those there are were kept
     */
    public static String photograph(String cloth, Map<String, String> kept) {
        String when = kept.get(cloth);
        return when == null ? "" : "/made/" + cloth + "/photograph.jpg?v=" + when.replaceAll("\\D", "");
    }

    private static ClothCard of(
            PageContext room, SavedCloth saved, Map<String, Length> pictures, String photograph, Standing standing) {
        Settings settings = ClothAsked.settings(room, saved);
        ClothView view = new ClothView(saved, new Stash(List.of()), pictures, settings, Purpose.NOTHING, "");
        return new ClothCard(
                saved,
                new Pictures(view.still(Face.FRONT), view.still(Face.BACK), photograph),
                view.planned(),
                standing,
                view.figures(),
                settings.pages());
    }

    public String stage() {
        return standing.stage();
    }

    /** What she should know before she cuts it, a sentence each. */
    public List<String> amiss() {
        return standing.amiss();
    }

    public String front() {
        return pictures.front();
    }

    public String back() {
        return pictures.back();
    }

    /** The page it is looked at on: what is sewn with its slip, what is not on the bench. */
    public String href() {
        return (life().stage() == Stage.SEWN ? "/made/" : "/cloth/") + saved.id();
    }

    public Life life() {
        return saved.document().life();
    }

    public String about() {
        return about(life(), language);
    }

    /** When it was made, what it wrapped and who has it, as far as she wrote it down. */
    public static String about(Life life, Language language) {
        KeepingWords words = KeepingWords.in(language);
        String about = "";
        if (!life.made().isEmpty()) {
            about = words.aboutMade(life.made());
        }
        if (!life.wrapped().isEmpty()) {
            about = about.isEmpty()
                    ? words.aboutWrapped(life.wrapped())
                    : words.aboutAlsoWrapped(about, life.wrapped());
        }
        if (!life.keeper().isEmpty()) {
            about = about.isEmpty() ? words.aboutWith(life.keeper()) : words.aboutAlsoWith(about, life.keeper());
        }
        return about;
    }

    /** How often it wrapped something again, and the last time as she wrote it; empty where it never did. */
    public String used() {
        int uses = life().uses();
        List<Keepsake.Use> written = life().kept().used();
        String last = written.isEmpty() ? "" : words(written.get(written.size() - 1));
        KeepingWords words = KeepingWords.in(language);
        return uses == 0 ? "" : last.isEmpty() ? words.used(uses) : words.usedLast(last, uses);
    }

    private String words(Keepsake.Use use) {
        List<String> words = new ArrayList<>(List.of(use.day(), use.what()));
        words.add(use.who().isEmpty() ? "" : KeepingWords.in(language).useFor(use.who()));
        words.removeIf(String::isEmpty);
        return String.join(", ", words);
    }

    /** Whether a word she looks for is in its name, its notes, its uses or its fabrics. */
    boolean isCalled(String word) {
        List<String> all = new ArrayList<>(List.of(saved.name(), life().made(), life().wrapped(), life().keeper()));
        all.add(life().kept().word());
        life().kept().used().forEach(use -> all.add(words(use)));
        saved.document().plan().ifPresent(plan -> plan.fabrics().forEach(fabric -> all.add(fabric.name())));
        String wanted = word.toLowerCase(Locale.ROOT);
        return all.stream().anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
    }

    public boolean made() {
        return saved.document().plan().isPresent();
    }
}
