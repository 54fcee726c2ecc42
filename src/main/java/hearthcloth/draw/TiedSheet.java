package hearthcloth.draw;

import hearthcloth.draw.cloth.Dyes;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.draw.tied.TiedLook;
import hearthcloth.geometry.Point;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.tie.Wrapped;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The tied gift on a sheet of its own: three views and what shows. */
final class TiedSheet {

    private static final double WIDTH = 260;
    private static final double HEIGHT = 120;
    private static final double AIR = 8;

    private TiedSheet() {}

    /** The cloth of a plan tied; empty where it does not tie the gift. */
    static Optional<TiedGift> tied(Plan plan, Wrapped wrapped) {
        Map<String, FabricLook> fabrics = new LinkedHashMap<>();
        for (Fabric fabric : plan.fabrics()) {
            fabrics.put(fabric.name(), FabricLook.of(fabric));
        }
        TiedLook look = new TiedLook(fabrics, Dyes.of(plan).thread());
        return wrapped.fold(plan.cloth()).map(fold -> TiedGift.of(plan.cloth(), fold, look));
    }

    static Picture of(Plan plan, Wrapped wrapped, TiedGift tied, Voice voice) {
        TextColumn column = new TextColumn(WIDTH);
        String title = voice.printing()
                .tiedSheet(
                        wrapped.gift().describe(voice),
                        voice.tying().tieName(wrapped.tie().name()));
        column.words(title, 0, PrintSizes.HEADING, 2);
        column.words(plan.story().title().in(voice) + ".", 0, PrintSizes.SMALL, 1)
                .gap(4);
        column.picture(tied.views(WIDTH, HEIGHT, PrintSizes.SMALL, voice), 0).gap(3);
        for (String sentence : tied.whatShows().sentences(voice)) {
            column.words(sentence, PrintSizes.BODY);
        }
        Picture sheet = column.finished(title);
        return new Sketch()
                .place(sheet, new Point(AIR, AIR))
                .finished(title, WIDTH + 2 * AIR, sheet.height() + 2 * AIR);
    }
}
