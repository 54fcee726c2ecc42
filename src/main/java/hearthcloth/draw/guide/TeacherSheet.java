package hearthcloth.draw.guide;

import hearthcloth.cloth.face.Layers;
import hearthcloth.draw.cloth.Legend;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** A sheet for the teacher: what to do before the class, who has what, and where each cloth will be thick. */
public final class TeacherSheet {

    private static final double PICTURE = 26;
    private static final double AIR = 4;
    private static final double SWATCH = 3.6;

    private final Voice voice;
    private final Flow flow;

    public TeacherSheet(Voice voice, Flow flow) {
        this.voice = voice;
        this.flow = flow;
    }

    /**
     * Adds the sheet.
     *
     * @param before what to know first, such as whose cut comes first
     */
    public void flow(List<Bag> bags, List<String> before) {
        flow.add(new TextColumn(flow.width())
                .words(voice.printing().teacherTitle(), PrintSizes.HEADING)
                .gap(1)
                .finished(voice.printing().teacherTitle()));
        for (String line : before) {
            flow.add(new TextColumn(flow.width())
                    .item("•", 4, line, PrintSizes.BODY)
                    .gap(0.4)
                    .finished(line));
        }
        flow.gap(2)
                .add(new TextColumn(flow.width())
                        .words(voice.printing().teacherDot(), PrintSizes.BODY)
                        .gap(1)
                        .finished(voice.printing().teacherDot()));
        bags.forEach(bag -> flow.add(row(bag)));
    }

    private Picture row(Bag bag) {
        TextColumn words = new TextColumn(flow.width() - PICTURE - AIR);
        words.gap(1.2);
        words.words(bag.title(voice), PrintSizes.STEP);
        words.words(about(bag.plan()), PrintSizes.BODY);
        fabrics(words, bag.plan().fabrics());
        words.words(thick(bag.plan()), PrintSizes.BODY);
        bag.notes().forEach(note -> words.words(note, PrintSizes.STRONG));
        Picture beside = words.finished(bag.title(voice));
        Picture cloth = SmallCloth.withThickest(bag.plan(), PICTURE);
        double height = Math.max(beside.height(), cloth.height() + 1.5) + 2;
        return new Sketch()
                .line(new Point(0, 0), new Point(flow.width(), 0), Stroke.solid(0.2, Palette.LINE))
                .place(cloth, new Point(0, 1.5))
                .place(beside, new Point(PICTURE + AIR, 0))
                .finished(bag.title(voice), flow.width(), height);
    }

    private String about(Plan plan) {
        return voice.printing()
                .teacherAbout(
                        plan.cloth().isFree() ? 0 : plan.figures().joins(),
                        plan.cloth().patches().size(),
                        plan.cuts().size(),
                        voice.write(plan.cloth().finished(), Rounding.NEAREST),
                        plan.story().title().in(voice));
    }

    /** Swatches with their names, as many lines as it takes. */
    private void fabrics(TextColumn words, List<Fabric> fabrics) {
        double room = words.width();
        int at = 0;
        while (at < fabrics.size()) {
            int from = at;
            double x = 0;
            do {
                x += extent(fabrics.get(at));
                at++;
            } while (at < fabrics.size() && x + extent(fabrics.get(at)) <= room);
            List<Fabric> line = fabrics.subList(from, at);
            words.draw(PrintSizes.BODY.leading(), (sketch, y) -> line(sketch, y, line));
        }
    }

    private static double extent(Fabric fabric) {
        return SWATCH + 1.5 + PrintSizes.BODY.width(fabric.name()) + 5;
    }

    private static void line(Sketch sketch, double y, List<Fabric> line) {
        double x = 0;
        for (Fabric fabric : line) {
            double drop = (PrintSizes.BODY.leading() - SWATCH) / 2;
            Legend.swatch(sketch, new Bounds(x, y + drop, SWATCH, SWATCH), fabric.colour());
            sketch.words(
                    fabric.name(),
                    new Point(x + SWATCH + 1.5, y + TextColumn.baseline(PrintSizes.BODY)),
                    PrintSizes.BODY);
            x += extent(fabric);
        }
    }

    private String thick(Plan plan) {
        List<Layers.Spot> spots = SmallCloth.thickest(plan);
        if (spots.isEmpty()) {
            return voice.printing().teacherNoCross();
        }
        List<String> steps = spots.stream()
                .map(Layers.Spot::step)
                .distinct()
                .map(String::valueOf)
                .toList();
        return voice.printing()
                .teacherThick(
                        steps.size(), spots.size(), String.valueOf(spots.get(0).plies()), voice.commas(steps));
    }
}
