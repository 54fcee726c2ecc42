package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.ClothDocument.Life;
import hearthcloth.store.json.ClothDocument.Stage;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.work.Purpose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One cloth on the shelf, to choose it by.
 *
 * @param front and {@code back} as SVG
 * @param size finished, in her unit
 * @param stage how far it has come, in a word
 */
public record ClothCard(
        SavedCloth saved, String front, String back, String size, String stage, List<ClothFigures.Line> figures) {

    /**
     * Cloths to choose one of.
     *
     * @param to where each leads, before its id
     */
    public record Choice(List<ClothCard> cards, String to) {}

    /** Cloths as they stand on the shelf, to choose one of them. */
    public static List<ClothCard> all(PageContext room, List<SavedCloth> cloths) {
        Map<String, Length> pictures = room.store().swatches().across();
        return cloths.stream().map(saved -> of(room, saved, pictures)).toList();
    }

    private static ClothCard of(PageContext room, SavedCloth saved, Map<String, Length> pictures) {
        Settings settings = ClothAsked.settings(room, saved);
        Ruler ruler = settings.ruler();
        ClothView view = new ClothView(saved, new Stash(List.of()), pictures, settings, Purpose.NOTHING, "");
        Stage stage = saved.document().life().stage();
        Size size = saved.document().design().layout().finished();
        String words = size.isSquare()
                ? ruler.write(size.width(), Rounding.NEAREST) + " square"
                : ruler.write(size, Rounding.NEAREST);
        return new ClothCard(
                saved,
                view.still(Face.FRONT),
                view.still(Face.BACK),
                words,
                words(stage),
                view.figures());
    }

    private static String words(Stage stage) {
        return switch (stage) {
            case DESIGNED -> "designed";
            case CUT -> "cut";
            case RECUT -> "cut, but for what was asked for since";
            case SEWN -> "sewn";
        };
    }

    public Life life() {
        return saved.document().life();
    }

    public String about() {
        return about(life());
    }

    /** When it was made, what it wrapped and who has it, as far as she wrote it down. */
    static String about(Life life) {
        List<String> about = new ArrayList<>();
        if (!life.made().isEmpty()) {
            about.add("Made " + life.made());
        }
        if (!life.wrapped().isEmpty()) {
            about.add((about.isEmpty() ? "Wrapped " : "wrapped ") + life.wrapped());
        }
        if (!life.keeper().isEmpty()) {
            about.add((about.isEmpty() ? "With " : "with ") + life.keeper());
        }
        return String.join("; ", about);
    }

    public boolean made() {
        return saved.document().plan().isPresent();
    }
}
