package hearthcloth.draw.guide;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.draw.cloth.PatchName;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** A slip of paper for every patch, to cut out and pin on: its name and cut size, its top, and which side lies up. */
public final class PatchSlips {

    private static final int COLUMNS = 3;
    private static final double HEIGHT = 34;
    private static final Type NAME = Type.of(24 * Type.POINT, Weight.BOLD, Palette.INK);

    private PatchSlips() {}

    /** The pages; {@code flow} is still empty. */
    public static List<Picture> pages(Plan plan, Voice voice, Flow flow) {
        intro(voice, flow);
        double width = Cards.width(flow, COLUMNS);
        Cards.flow(flow, slips(plan, voice, width, ""), COLUMNS);
        return flow.pages();
    }

    /** Adds the slips of many bags, each slip with the number of its bag. */
    public static void flow(List<Bag> bags, Voice voice, Flow flow) {
        intro(voice, flow);
        double width = Cards.width(flow, COLUMNS);
        for (Bag bag : bags) {
            Picture title = new TextColumn(flow.width())
                    .words(bag.title(voice), PrintSizes.STEP)
                    .finished(bag.title(voice));
            List<Picture> slips = slips(bag.plan(), voice, width, "bag " + bag.number());
            int rows = (slips.size() + COLUMNS - 1) / COLUMNS;
            double whole = title.height() + rows * (HEIGHT + Cards.GAP);
            flow.gap(7);
            if (whole > flow.left() && whole <= flow.height()) {
                flow.turn(); // the slips of a bag stay on one page
            }
            flow.lead(title);
            Cards.flow(flow, slips, COLUMNS);
        }
    }

    private static void intro(Voice voice, Flow flow) {
        flow.add(new TextColumn(flow.width())
                .words(voice.printing().slipsTitle(), PrintSizes.HEADING)
                .words(voice.printing().slipsHow(), PrintSizes.BODY)
                .gap(1)
                .part());
    }

    private static List<Picture> slips(Plan plan, Voice voice, double width, String bag) {
        return plan.cloth().laid().stream()
                .map(laid -> slip(laid, voice, width, bag))
                .toList();
    }

    private static Picture slip(Laid laid, Voice voice, double width, String bag) {
        Patch patch = laid.patch();
        Sketch sketch = new Sketch().outline(new Bounds(0, 0, width, HEIGHT), Stroke.stitches(0.3, Palette.SECOND_INK));
        Type name = NAME;
        String label = PatchName.of(patch, voice);
        while (name.width(label) > width - 18) {
            name = name.sized(name.size() * 0.92);
        }
        sketch.words(label, new Point(4, 11), name);
        arrow(sketch, new Point(width - 7, 4), voice);
        List<String> lines = List.of(
                voice.printing().slipsSize(voice.write(laid.cut(), Rounding.UP)),
                patch.fabric(),
                voice.printing().slipsUp(patch.showing().name()));
        // Below the word under the arrow, which a long size would meet in some languages.
        double y = 19;
        for (String line : lines) {
            sketch.words(Paragraph.cut(line, width - 6, PrintSizes.BODY), new Point(4, y), PrintSizes.BODY);
            y += PrintSizes.BODY.leading() + 0.6;
        }
        Point corner = new Point(width - 3, HEIGHT - 3);
        sketch.words(bag, corner, PrintSizes.STRONG.at(Type.Anchor.END));
        return sketch.finished(label, width, HEIGHT);
    }

    /** An arrow to the top with its word under it; {@code tip} is its point. */
    private static void arrow(Sketch sketch, Point tip, Voice voice) {
        sketch.line(tip.plus(0, 2), tip.plus(0, 6.5), Stroke.solid(0.8, Palette.INK));
        sketch.add(new Mark.Area(List.of(tip, tip.plus(1.8, 3), tip.plus(-1.8, 3)), Palette.INK));
        sketch.words(voice.printing().slipsTop(), tip.plus(0, 11), PrintSizes.SMALL.at(Type.Anchor.MIDDLE));
    }
}
