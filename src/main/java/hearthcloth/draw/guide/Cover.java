package hearthcloth.draw.guide;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.cloth.Dyes;
import hearthcloth.draw.cloth.FacePicture;
import hearthcloth.draw.cloth.FaceSheet;
import hearthcloth.draw.cloth.Legend;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.ScaledPicture;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.sew.Gather;
import hearthcloth.sew.Guide;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * The first page: both faces of the finished cloth, its main figures, what to have ready, and the square that checks
 * the printer's scale.
 */
public final class Cover {

    private static final double BETWEEN = 8;

    /** The height of a face beside the other one, in millimetres; {@link #LARGE} is its height across the page. */
    private static final double SMALL = 98;

    /** Free patches of which names can be read at half the width of the page. */
    private static final int FEW = 12;

    private static final double LARGE = 185;

    /** The height of the front where it stands alone in the guide for a class. */
    private static final double ALONE = 146;

    private final Plan plan;
    private final Guide guide;
    private final Voice voice;
    private final Flow flow;
    private final PrintingWords words;

    public Cover(Plan plan, Guide guide, Voice voice, Flow flow) {
        this.plan = plan;
        this.guide = guide;
        this.voice = voice;
        this.flow = flow;
        this.words = voice.printing();
    }

    public void flow() {
        TextColumn head = new TextColumn(flow.width());
        String title = plan.story().title().in(voice);
        head.words(title, 0, PrintSizes.TITLE, 2);
        head.words(plan.story().goodAt().in(voice), PrintSizes.BODY);
        flow.add(head.gap(3).finished(title));
        faces();
        flow.add(figures());
        flow.add(checkSquare());
        needs();
    }

    /** Both faces where they stand side by side, the front alone where they do not. */
    void facesOrFront() {
        double half = (flow.width() - BETWEEN) / 2;
        if (new FacePicture(plan, Face.BACK, voice).within(half, SMALL).excess(half, SMALL) > 0) {
            flow.add(face(Face.FRONT, ALONE));
        } else {
            faces();
        }
    }

    private void needs() {
        flow.heading(words.needsTitle());
        for (Gather.FabricNeed need : guide.gather().fabrics()) {
            fabric(need);
        }
        threadAndTools();
    }

    void threadAndTools() {
        TextColumn thread = new TextColumn(flow.width());
        thread.words(words.threadTitle(), PrintSizes.STRONG).words(guide.notes().threadWords(), PrintSizes.BODY);
        flow.add(thread.gap(1.5).finished("Thread"));
        TextColumn tools = new TextColumn(flow.width());
        tools.words(words.toolsTitle(), PrintSizes.STRONG)
                .words(
                        voice.sentences(guide.gather().tools().stream()
                                .map(words::toolsEach)
                                .toList()),
                        PrintSizes.BODY);
        flow.add(tools.gap(1.5).part());
    }

    /** Both faces: side by side where they can be read at that size, otherwise each across the page. */
    private void faces() {
        double half = (flow.width() - BETWEEN) / 2;
        ScaledPicture front = new FacePicture(plan, Face.FRONT, voice).within(half, SMALL);
        ScaledPicture back = new FacePicture(plan, Face.BACK, voice).within(half, SMALL);
        boolean many = plan.cloth().isFree() && plan.cloth().patches().size() > FEW;
        if (many || front.excess(half, SMALL) > 0 || back.excess(half, SMALL) > 0) {
            flow.add(face(Face.FRONT, LARGE));
            flow.add(face(Face.BACK, LARGE));
            return;
        }
        TextColumn faces = new TextColumn(flow.width());
        faces.draw(PrintSizes.STRONG.leading() + 1.5, (sketch, y) -> {
            sketch.words(caption(Face.FRONT), new Point(0, y + 4), PrintSizes.STRONG);
            sketch.words(caption(Face.BACK), new Point(half + BETWEEN, y + 4), PrintSizes.STRONG);
        });
        faces.draw(Math.max(front.picture().height(), back.picture().height()), (sketch, y) -> {
            sketch.place(front.picture(), new Point(0, y));
            sketch.place(back.picture(), new Point(half + BETWEEN, y));
        });
        flow.add(faces.words(words.drawn(front.scale().word(voice)), PrintSizes.SMALL)
                .gap(3)
                .part());
    }

    private Picture face(Face face, double tallest) {
        ScaledPicture drawn = new FacePicture(plan, face, voice).within(flow.width(), tallest);
        TextColumn column = new TextColumn(flow.width());
        column.words(words.faceDrawn(caption(face), drawn.scale().word(voice)), PrintSizes.STRONG)
                .gap(1.5);
        return column.picture(drawn.picture(), 0).gap(4).finished(caption(face));
    }

    private String caption(Face face) {
        return FaceSheet.name(plan, face, voice);
    }

    private record Figure(String name, String number) {}

    private Picture figures() {
        PlanFigures figures = plan.figures();
        List<Figure> cells = cells(figures);
        TextColumn column = new TextColumn(flow.width());
        column.seam().gap(2);
        Type type = figureType(cells);
        double gap = (flow.width()
                        - cells.stream().mapToDouble(cell -> extent(cell, type)).sum())
                / (cells.size() - 1);
        column.draw(PrintSizes.SMALL.leading() + type.leading(), (sketch, y) -> {
            double x = 0;
            for (Figure cell : cells) {
                sketch.words(cell.name(), new Point(x, y + 4), PrintSizes.SMALL);
                sketch.words(cell.number(), new Point(x, y + 4 + type.leading()), type);
                x += extent(cell, type) + gap;
            }
        });
        return column.gap(3).words(bound(figures), PrintSizes.SMALL).gap(4).finished("Figures");
    }

    private List<Figure> cells(PlanFigures figures) {
        return List.of(
                new Figure(words.figureFinished(), voice.write(plan.cloth().finished(), Rounding.NEAREST)),
                new Figure(
                        words.figurePatches(),
                        Integer.toString(plan.cloth().patches().size())),
                plan.cloth().isFree()
                        ? new Figure(
                                words.figureSeams(),
                                Integer.toString(plan.cloth().steps().size()))
                        : new Figure(words.figureJoins(), Integer.toString(figures.joins())),
                new Figure(words.figureCuts(), Integer.toString(figures.cuts())),
                new Figure(
                        words.figureLost(),
                        voice.measuring().percent(Long.toString(figures.areas().lostPercent()))),
                new Figure(
                        words.figureThread(), voice.run(guide.notes().thread().total(), Rounding.UP)));
    }

    private static double extent(Figure cell, Type type) {
        return Math.max(PrintSizes.SMALL.width(cell.name()), type.width(cell.number()));
    }

    /** The largest type in which all figures stand in one row. */
    private Type figureType(List<Figure> cells) {
        Type type = PrintSizes.FIGURE;
        while (type.size() > PrintSizes.BODY.size() && total(cells, type) > flow.width() - 6 * (cells.size() - 1)) {
            type = type.sized(type.size() * 0.95);
        }
        return type;
    }

    private static double total(List<Figure> cells, Type type) {
        return cells.stream().mapToDouble(cell -> extent(cell, type)).sum();
    }

    private String bound(PlanFigures figures) {
        Bound bound = plan.bound();
        String touched = voice.area(figures.areas().touched(), Rounding.NEAREST);
        String least = voice.area(bound.touchedMm2(), Rounding.DOWN);
        String lost = voice.area(bound.lostMm2(), Rounding.DOWN);
        boolean loses = !lost.equals(voice.area(0, Rounding.DOWN));
        String said = bound.touchedMm2() == 0
                ? words.lostTouched(touched)
                : loses ? words.lostLeastLost(least, lost, touched) : words.lostLeast(least, touched);
        return voice.sentences(List.of(said, figures.joins() == 0 ? "" : words.lostJoins(bound.joins())));
    }

    private void fabric(Gather.FabricNeed need) {
        TextColumn row = new TextColumn(flow.width());
        double before = row.height();
        row.words(need.fabric(), 9, PrintSizes.STRONG, 2);
        row.words(String.join("; ", need.pieces()), 9, PrintSizes.BODY, Integer.MAX_VALUE);
        row.draw(
                0,
                (sketch, y) -> Legend.swatch(
                        sketch, new Bounds(0, before + 0.8, 6, 6), Dyes.of(plan).colour(need.fabric())));
        flow.add(row.gap(1.5).finished(need.fabric()));
    }

    /** A square of one inch, or of two centimetres, to check that the printer kept to scale. */
    private Picture checkSquare() {
        Length side = voice.ruler().isMetric() ? Length.cm(2) : Length.inches(1);
        double mm = side.in(Unit.MILLIMETRE);
        Bounds square = new Bounds(0, 1, mm, mm);
        String told = words.square(voice.write(side, Rounding.NEAREST));
        Sketch sketch = new Sketch().outline(square, Stroke.solid(0.3, Palette.INK));
        double y = square.y() + 4;
        for (String line : Paragraph.lines(told, flow.width() - mm - 5, PrintSizes.SMALL)) {
            sketch.words(line, new Point(mm + 5, y), PrintSizes.SMALL);
            y += PrintSizes.SMALL.leading();
        }
        return sketch.part(flow.width(), Math.max(square.bottom(), y) + 3);
    }
}
