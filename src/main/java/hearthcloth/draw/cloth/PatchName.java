package hearthcloth.draw.cloth;

import hearthcloth.cloth.Patch;
import hearthcloth.words.speech.Voice;

/** What is written on a patch in a picture: its letters and numbers, and a word for the hearth. */
public final class PatchName {

    private static final String HEARTH = "hearth";

    private PatchName() {}

    public static String of(Patch patch, Voice voice) {
        return of(patch.place().id(), voice);
    }

    /** The same by a patch's name in the cutting plan. */
    public static String of(String id, Voice voice) {
        return id.equals(HEARTH) ? voice.printing().labelHearth() : id.replace('.', '·');
    }
}
