package hearthcloth.draw.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;

/** A face of the cloth on a sheet of its own: name, size, scale, the drawing and its legend. */
public final class FaceSheet {

    private static final double WIDTH = 190;
    private static final double AIR = 8;

    private FaceSheet() {}

    public static Picture of(Plan plan, Face face, Ruler ruler) {
        FacePicture picture = new FacePicture(plan, face, ruler);
        ScaledPicture drawn = picture.within(WIDTH, WIDTH);
        TextColumn column = new TextColumn(WIDTH);
        column.words(name(plan, face), 0, PrintSizes.HEADING, 1);
        String size = ruler.write(plan.cloth().finished(), Rounding.NEAREST);
        column.words(
                plan.story().title() + ". " + size + " finished, hemmed. Drawn "
                        + drawn.scale().word() + ".",
                0,
                PrintSizes.SMALL,
                2);
        column.gap(4).picture(drawn.picture(), (WIDTH - drawn.picture().width()) / 2);
        column.gap(5).picture(Legend.of(picture.shown(), Dyes.of(plan), WIDTH, PrintSizes.SMALL), 0);
        Picture sheet = column.finished(drawn.picture().title());
        return new Sketch()
                .place(sheet, new Point(AIR, AIR))
                .finished(sheet.title(), WIDTH + 2 * AIR, sheet.height() + 2 * AIR);
    }

    public static String name(Plan plan, Face face) {
        String fells = plan.cloth().making().fell() == face ? ", with fells and hem" : "";
        return (face == Face.FRONT ? "Front" : "Back") + fells;
    }
}
