package hearthcloth.draw.guide;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Step;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ColourVision;
import hearthcloth.colour.Lab;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.SeamThread;
import hearthcloth.stash.Fabric;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What there is to see in a cloth's colours: light and dark in five steps, the front as three kinds of colour-blind eyes see
 * it, and for each seam the colour of thread that shows least and most.
 */
public final class ColourPage {

    private static final double BETWEEN = 8;

    /** The side of a picture, in millimetres. */
    private static final double TALLEST = 62;

    private static final int STEPS = 5;

    /** Where the columns of the table begin, as shares of the width: seams, least, most. */
    private static final double[] COLUMNS = {0, 0.3, 0.65};

    private final Plan plan;
    private final Flow flow;
    private final PrintingWords words;

    /** A thread by its colour. */
    private record Spool(String words, Colour colour) {}

    /** A shade of grey that thread is sold in, by its word in the catalogue. */
    @SuppressWarnings("ImmutableEnumChecker") // a Colour is immutable, though nothing marks it so
    private enum Shade {
        BLACK(0x1e2229),
        DARK(0x595f69),
        MIDDLE(0x8a8f98),
        LIGHT(0xc4c7cc),
        WHITE(0xfdfdfb);

        private final Colour colour;

        Shade(int rgb) {
            this.colour = Colour.of(rgb);
        }
    }

    /** Of a plan, on these pages. */
    public ColourPage(Plan plan, Voice voice, Flow flow) {
        this.plan = plan;
        this.flow = flow;
        this.words = voice.printing();
    }

    /** Adds it. */
    public void flow() {
        flow.heading(words.coloursTitle());
        flow.add(beside(
                view(words.coloursValues(), ColourPage::stepped), view(eyes("protan"), ColourVision.PROTAN::seen)));
        flow.add(beside(
                view(eyes("deutan"), ColourVision.DEUTAN::seen), view(eyes("tritan"), ColourVision.TRITAN::seen)));
        threads();
    }

    private String eyes(String kind) {
        return words.coloursEyes(kind);
    }

    /** The grey of its fifth of lightness. */
    private static Colour stepped(Colour colour) {
        double step = Math.min(STEPS - 1, Math.floor(colour.lab().lightness() * STEPS / 100));
        return new Lab(10 + 80 * step / (STEPS - 1), 0, 0).toColour();
    }

    private Picture beside(Picture left, Picture right) {
        double half = (flow.width() + BETWEEN) / 2;
        TextColumn column = new TextColumn(flow.width());
        column.draw(Math.max(left.height(), right.height()), (sketch, y) -> {
            sketch.place(left, new Point(0, y));
            sketch.place(right, new Point(half, y));
        });
        return column.gap(4).finished(words.coloursTitle());
    }

    private Picture view(String caption, UnaryOperator<Colour> seen) {
        double wide = (flow.width() - BETWEEN) / 2;
        Map<String, Colour> colours = new LinkedHashMap<>();
        for (Fabric fabric : plan.fabrics()) {
            colours.put(fabric.name(), seen.apply(fabric.colour()));
        }
        Size size = plan.cloth().finished();
        double scale = Math.min(
                wide / size.width().in(Unit.MILLIMETRE), TALLEST / size.height().in(Unit.MILLIMETRE));
        TextColumn column = new TextColumn(wide);
        column.words(caption, PrintSizes.BODY).gap(1.5);
        column.draw(size.height().in(Unit.MILLIMETRE) * scale, (sketch, y) -> {
            for (Laid laid : plan.cloth().laid()) {
                sketch.fill(
                        bounds(laid.at(), scale, y),
                        colours.getOrDefault(laid.patch().fabric(), Colour.UNDYED));
            }
            sketch.outline(
                    new Bounds(
                            0,
                            y,
                            size.width().in(Unit.MILLIMETRE) * scale,
                            size.height().in(Unit.MILLIMETRE) * scale),
                    Stroke.solid(0.3, Palette.INK));
        });
        return column.finished(caption);
    }

    private static Bounds bounds(Rect at, double scale, double down) {
        return new Bounds(
                at.x().in(Unit.MILLIMETRE) * scale,
                down + at.y().in(Unit.MILLIMETRE) * scale,
                at.width().in(Unit.MILLIMETRE) * scale,
                at.height().in(Unit.MILLIMETRE) * scale);
    }

    /** A row for each two threads, with all seams they are for. */
    private void threads() {
        List<Spool> spools = spools();
        Map<List<String>, List<Integer>> rows = new LinkedHashMap<>();
        for (Step step : plan.cloth().steps()) {
            SeamThread<Spool> thread = SeamThread.of(plan.cloth(), step, plan.fabrics(), spools, Spool::colour);
            rows.computeIfAbsent(List.of(thread.least().words, thread.most().words), key -> new ArrayList<>())
                    .add(step.number());
        }
        if (rows.isEmpty()) {
            return;
        }
        TextColumn head = new TextColumn(flow.width());
        head.words(words.coloursThread(), PrintSizes.BODY);
        flow.lead(head.gap(1.5).finished(words.coloursThread()));
        flow.lead(SeamTable.row(
                List.of(words.coloursSeams(), words.coloursLeast(), words.coloursMost()),
                COLUMNS,
                flow.width(),
                PrintSizes.STRONG));
        rows.forEach((threads, seams) -> flow.add(SeamTable.row(
                List.of(numbers(seams), threads.get(0), threads.get(1)), COLUMNS, flow.width(), PrintSizes.BODY)));
    }

    /** Thread like each of the fabrics, and in five greys. */
    private List<Spool> spools() {
        List<Spool> spools = new ArrayList<>();
        for (Fabric fabric : plan.fabrics()) {
            spools.add(new Spool(words.coloursLike(fabric.name()), fabric.colour()));
        }
        for (Shade shade : Shade.values()) {
            spools.add(new Spool(words.coloursGrey(shade.name().toLowerCase(Locale.ROOT)), shade.colour));
        }
        return spools;
    }

    /** Numbers in a row as {@code 1–4, 6}. */
    private static String numbers(List<Integer> numbers) {
        List<int[]> runs = new ArrayList<>();
        for (int number : numbers) {
            if (!runs.isEmpty() && runs.get(runs.size() - 1)[1] == number - 1) {
                runs.get(runs.size() - 1)[1] = number;
            } else {
                runs.add(new int[] {number, number});
            }
        }
        return runs.stream()
                .map(run -> run[0] == run[1] ? Integer.toString(run[0]) : run[0] + "–" + run[1])
                .collect(Collectors.joining(", "));
    }
}
