package hearthcloth.draw.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;

/** A face of the cloth on a sheet of its own: name, size, scale, the drawing and its legend. */
public final class FaceSheet {

    private static final double WIDTH = 190;
    private static final double AIR = 8;

    private FaceSheet() {}

    public static Picture of(Plan plan, Face face, Voice voice) {
        FacePicture picture = new FacePicture(plan, face, voice);
        ScaledPicture drawn = picture.within(WIDTH, WIDTH);
        TextColumn column = new TextColumn(WIDTH);
        column.words(name(plan, face, voice), 0, PrintSizes.HEADING, 1);
        String size = voice.write(plan.cloth().finished(), Rounding.NEAREST);
        column.words(
                voice.printing()
                        .faceSheet(
                                drawn.scale().word(voice),
                                size,
                                plan.story().title().in(voice)),
                0,
                PrintSizes.SMALL,
                2);
        column.gap(4).picture(drawn.picture(), (WIDTH - drawn.picture().width()) / 2);
        column.gap(5).picture(Legend.of(picture.shown(), Dyes.of(plan), WIDTH, voice), 0);
        Picture sheet = column.finished(drawn.picture().title());
        return new Sketch()
                .place(sheet, new Point(AIR, AIR))
                .finished(sheet.title(), WIDTH + 2 * AIR, sheet.height() + 2 * AIR);
    }

    /** The face by its name, and where the fells are. */
    public static String name(Plan plan, Face face, Voice voice) {
        boolean fells = plan.cloth().making().fell() == face;
        return fells ? voice.printing().faceFells(key(face)) : voice.printing().faceName(key(face));
    }

    /** The word by which a catalogue tells the faces apart. */
    static String key(Face face) {
        return face == Face.FRONT ? "front" : "back";
    }
}
