package hearthcloth.draw;

import hearthcloth.cloth.Face;
import hearthcloth.draw.picture.Column;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.Plan;

/** A face of the cloth on a sheet of its own: name, size, scale, the drawing and its legend. */
final class FaceSheet {

    private static final double WIDTH = 190;
    private static final double AIR = 8;

    private FaceSheet() {}

    static Picture of(Plan plan, Face face, Ruler ruler) {
        FacePicture picture = new FacePicture(plan, face, ruler);
        Drawn drawn = picture.within(WIDTH, WIDTH);
        Column column = new Column(WIDTH);
        column.words(name(plan, face), 0, Print.HEADING, 1);
        String size = ruler.write(plan.cloth().finished(), Rounding.NEAREST);
        column.words(
                plan.story().title() + ". " + size + " finished, hemmed. Drawn "
                        + drawn.scale().word() + ".",
                0,
                Print.SMALL,
                2);
        column.gap(4).picture(drawn.picture(), (WIDTH - drawn.picture().width()) / 2);
        column.gap(5).picture(Legend.of(picture.shown(), Dyes.of(plan), WIDTH, Print.SMALL), 0);
        Picture sheet = column.finished(drawn.picture().title());
        return new Sketch()
                .place(sheet, new Point(AIR, AIR))
                .finished(sheet.title(), WIDTH + 2 * AIR, sheet.height() + 2 * AIR);
    }

    static String name(Plan plan, Face face) {
        String fells = plan.cloth().making().fell() == face ? ", with fells and hem" : "";
        return (face == Face.FRONT ? "Front" : "Back") + fells;
    }
}
