package hearthcloth.draw;

import hearthcloth.colour.Colour;
import hearthcloth.draw.picture.Column;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.tied.Look;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.Plan;
import hearthcloth.stash.Fabric;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The tied gift on a sheet of its own: three views and what shows. */
final class TiedSheet {

    private static final double WIDTH = 260;
    private static final double HEIGHT = 120;
    private static final double AIR = 8;

    private TiedSheet() {}

    /** A plan's cloth tied; empty where it does not tie the gift. */
    static Optional<TiedGift> tied(Plan plan, Wrapped wrapped) {
        Map<String, Colour> fabrics = new LinkedHashMap<>();
        for (Fabric fabric : plan.fabrics()) {
            fabrics.put(fabric.name(), fabric.colour());
        }
        Look look = new Look(fabrics, Dyes.of(plan).thread());
        return wrapped.fold(plan.cloth()).map(fold -> TiedGift.of(plan.cloth(), fold, look));
    }

    static Picture of(Plan plan, Wrapped wrapped, TiedGift tied, Ruler ruler) {
        Column column = new Column(WIDTH);
        String title = "The gift, tied: " + wrapped.gift().describe(ruler) + ", "
                + wrapped.tie().words();
        column.words(title, 0, Print.HEADING, 2);
        column.words(plan.story().title() + ".", 0, Print.SMALL, 1).gap(4);
        column.picture(tied.views(WIDTH, HEIGHT, Print.SMALL), 0).gap(3);
        for (String sentence : tied.whatShows().sentences()) {
            column.words(sentence, Print.BODY);
        }
        Picture sheet = column.finished(title);
        return new Sketch()
                .place(sheet, new Point(AIR, AIR))
                .finished(title, WIDTH + 2 * AIR, sheet.height() + 2 * AIR);
    }
}
