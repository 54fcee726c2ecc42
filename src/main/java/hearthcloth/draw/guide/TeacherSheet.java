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
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import java.util.List;
import java.util.stream.Collectors;

/** A sheet for the teacher: what to do before the class, who has what, and where each cloth will be thick. */
public final class TeacherSheet {

    private static final double PICTURE = 26;
    private static final double AIR = 4;
    private static final double SWATCH = 3.6;

    private final Ruler ruler;
    private final Flow flow;

    public TeacherSheet(Ruler ruler, Flow flow) {
        this.ruler = ruler;
        this.flow = flow;
    }

    /**
     * Adds the sheet.
     *
     * @param before what to know first, such as whose cut comes first
     */
    public void flow(List<Bag> bags, List<String> before) {
        flow.add(new TextColumn(flow.width())
                .words("For the teacher", PrintSizes.HEADING)
                .gap(1)
                .finished("For the teacher"));
        for (String line : before) {
            flow.add(new TextColumn(flow.width())
                    .item("•", 4, line, PrintSizes.BODY)
                    .gap(0.4)
                    .finished(line));
        }
        flow.gap(2)
                .add(new TextColumn(flow.width())
                        .words(
                                "A dot on a cloth marks where most layers meet. Have whoever sews there press the place with steam"
                                        + " and turn the handwheel.",
                                PrintSizes.BODY)
                        .gap(1)
                        .finished("Dots"));
        bags.forEach(bag -> flow.add(row(bag)));
    }

    private Picture row(Bag bag) {
        TextColumn words = new TextColumn(flow.width() - PICTURE - AIR);
        words.gap(1.2);
        words.words(bag.title(), PrintSizes.STEP);
        words.words(about(bag.plan()), PrintSizes.BODY);
        fabrics(words, bag.plan().fabrics());
        words.words(thick(bag.plan()), PrintSizes.BODY);
        bag.notes().forEach(note -> words.words(note, PrintSizes.STRONG));
        Picture beside = words.finished(bag.title());
        Picture cloth = SmallCloth.withThickest(bag.plan(), PICTURE);
        double height = Math.max(beside.height(), cloth.height() + 1.5) + 2;
        return new Sketch()
                .line(new Point(0, 0), new Point(flow.width(), 0), Stroke.solid(0.2, Palette.LINE))
                .place(cloth, new Point(0, 1.5))
                .place(beside, new Point(PICTURE + AIR, 0))
                .finished(bag.title(), flow.width(), height);
    }

    private String about(Plan plan) {
        int joins = plan.figures().joins();
        int patches = plan.cloth().patches().size();
        String joined = plan.cloth().isFree() || joins == 0 ? "" : joins == 1 ? ", 1 join" : ", " + joins + " joins";
        return plan.story().title().english() + ", " + ruler.write(plan.cloth().finished(), Rounding.NEAREST) + ": "
                + patches
                + " patches from " + plan.cuts().size() + (plan.cuts().size() == 1 ? " piece" : " pieces") + joined
                + ".";
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

    private static String thick(Plan plan) {
        List<Layers.Spot> spots = SmallCloth.thickest(plan);
        if (spots.isEmpty()) {
            return "No seam crosses another.";
        }
        List<Integer> steps = spots.stream().map(Layers.Spot::step).distinct().toList();
        return "Thickest: " + spots.get(0).plies() + " layers at "
                + (spots.size() == 1 ? "1 place" : spots.size() + " places") + ", sewn in "
                + (steps.size() == 1 ? "step " : "steps ")
                + steps.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".";
    }
}
