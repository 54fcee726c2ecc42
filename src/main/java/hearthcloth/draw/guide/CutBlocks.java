package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.CutNumber;
import hearthcloth.draw.cloth.CutPicture;
import hearthcloth.draw.cloth.Dimensions;
import hearthcloth.draw.cloth.DrawingScale;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.ScaledPicture;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.PieceTask;
import hearthcloth.stash.Piece;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** One piece of the stash to cut, as blocks: its picture with the first cuts beside it, then the other cuts. */
public final class CutBlocks {

    /** From the left of an item to its measure, in millimetres; {@link #SENTENCE} is the way to its sentence. */
    private static final double MEASURE = 7;

    private static final double SENTENCE = 25;
    private static final Type NUMBER = Type.of(14 * Type.POINT, Weight.BOLD, Palette.INK);

    private final Plan plan;
    private final PieceTask task;
    private final Voice voice;

    public CutBlocks(Plan plan, PieceTask task, Voice voice) {
        this.plan = plan;
        this.task = task;
        this.voice = voice;
    }

    /**
     * The blocks, {@code width} wide; none is higher than {@code height} unless a single sentence is. Both are in
     * millimetres.
     */
    public List<Picture> blocks(double width, double height) {
        Size size = task.cut().piece().size();
        boolean tall = size.height().in(hearthcloth.measure.Unit.MILLIMETRE)
                > 1.15 * size.width().in(hearthcloth.measure.Unit.MILLIMETRE);
        return tall ? beside(width, height) : below(width, height);
    }

    /** The blocks of a long piece: words to the right of its picture as far as it reaches, the rest below. */
    private List<Picture> beside(double width, double height) {
        double across = width * 0.55;
        ScaledPicture drawn = new CutPicture(plan, task, voice).within(across, tallest(height));
        if (drawn.excess(across, tallest(height)) > 0) {
            return below(width, height);
        }
        double from = Math.max(drawn.picture().width() + 6, width * 0.3);
        TextColumn words = new TextColumn(width - from);
        double room = Math.max(drawn.picture().height(), 60);
        List<Picture> narrow = cuts(words.width(), 4);
        int told = fill(words, narrow, room);
        List<Picture> ticks = ticks(words.width());
        boolean all = told == narrow.size()
                && words.height() + ticks.stream().mapToDouble(Picture::height).sum() <= room;
        if (all) {
            ticks.forEach(tick -> words.picture(tick, 0));
        }
        double reach = Math.max(drawn.picture().height(), words.height());
        Picture seen = words.finished("Cuts");
        TextColumn head = head(width, drawn.scale());
        head.draw(
                reach,
                (sketch, y) -> sketch.place(drawn.picture(), new Point(0, y)).place(seen, new Point(from, y)));
        List<Picture> blocks = new ArrayList<>(List.of(head.gap(2).finished(task.title())));
        List<Picture> wide = cuts(width, 0);
        blocks.addAll(wide.subList(told, wide.size()));
        blocks.addAll(all ? List.of() : ticks(width));
        return blocks;
    }

    /** Adds items to a column as long as they fit; returns how many did. */
    private static int fill(TextColumn words, List<Picture> items, double room) {
        int told = 0;
        while (told < items.size() && words.height() + items.get(told).height() <= room) {
            words.picture(items.get(told++), 0);
        }
        return told;
    }

    /** The blocks of a wide piece: its picture across the page, words below. */
    private List<Picture> below(double width, double height) {
        ScaledPicture drawn = new CutPicture(plan, task, voice).within(width, tallest(height));
        TextColumn head = head(width, drawn.scale());
        head.picture(drawn.picture(), 0).gap(3);
        List<Picture> blocks = new ArrayList<>(List.of(head.finished(task.title())));
        blocks.addAll(cuts(width, 0));
        blocks.addAll(ticks(width));
        return blocks;
    }

    /** The greatest height of the picture, in millimetres; more for more cuts. */
    private double tallest(double height) {
        int cuts = task.lines().size();
        return Math.min(cuts < 2 ? 60 : cuts < 4 ? 75 : 150, height - 60);
    }

    private TextColumn head(double width, DrawingScale scale) {
        TextColumn head = new TextColumn(width);
        head.words(task.title(), 0, PrintSizes.STEP, 2);
        Piece piece = task.cut().piece();
        head.words(
                voice.printing()
                        .cutHead(
                                Integer.toString(piece.row()),
                                scale.word(voice),
                                voice.ruler().isMetric() ? "metric" : "inches",
                                piece.washed().name()),
                PrintSizes.SMALL);
        return head.gap(2.5);
    }

    /** A line for each cut, its sentence moved left by {@code nearer} millimetres. */
    private List<Picture> cuts(double width, double nearer) {
        List<Picture> items = new ArrayList<>();
        if (task.lines().isEmpty()) {
            TextColumn none = new TextColumn(width).words(voice.printing().cutNothing(), PrintSizes.BODY);
            items.add(none.part());
        }
        for (CutLine line : task.lines()) {
            TextColumn item = new TextColumn(width);
            item.draw(0, (sketch, y) -> {
                double base = y + TextColumn.baseline(PrintSizes.BODY);
                Point middle = new Point(CutNumber.RADIUS, base - Dimensions.halfCaps(PrintSizes.BODY));
                CutNumber.disc(sketch, middle, line.number());
                sketch.words(voice.number(line.measure(), Rounding.UP), new Point(MEASURE, base), NUMBER);
            });
            item.words(line.sentence(), SENTENCE - nearer, PrintSizes.BODY, Integer.MAX_VALUE);
            items.add(item.gap(1.6).finished(line.sentence()));
        }
        return items;
    }

    /** A box to tick for each patch, then the leftovers. */
    private List<Picture> ticks(double width) {
        List<Picture> items = new ArrayList<>();
        int columns = width > 150 ? 2 : 1;
        double cell = width / columns;
        List<String> gives = task.gives();
        for (int i = 0; i < gives.size(); i += columns) {
            List<String> inRow = gives.subList(i, Math.min(gives.size(), i + columns));
            TextColumn row = new TextColumn(width);
            double tall = inRow.stream()
                    .mapToDouble(words -> tick(words, cell).height())
                    .max()
                    .orElse(0);
            row.gap(i == 0 ? 1.5 : 0).draw(tall, (sketch, y) -> {
                for (int j = 0; j < inRow.size(); j++) {
                    sketch.place(tick(inRow.get(j), cell), new Point(j * cell, y));
                }
            });
            items.add(row.finished("Gives"));
        }
        if (!task.left().isEmpty()) {
            TextColumn left = new TextColumn(width);
            left.gap(1.5).words(voice.printing().cutLeft(String.join("; ", task.left())), PrintSizes.SMALL);
            items.add(left.gap(2).part());
        }
        return items;
    }

    private static Picture tick(String words, double width) {
        TextColumn tick = new TextColumn(width);
        tick.draw(0, (sketch, y) -> sketch.outline(new Bounds(0.6, y + 0.5, 3.4, 3.4), Stroke.solid(0.3, Palette.INK)));
        return tick.words(words, MEASURE, PrintSizes.BODY, Integer.MAX_VALUE)
                .gap(0.6)
                .finished(words);
    }

    /** All pieces one below the other, on one long sheet. */
    public static Picture sheet(Plan plan, List<PieceTask> tasks, Voice voice) {
        double air = 8;
        TextColumn column = new TextColumn(190);
        column.words(voice.printing().cutTitle(), PrintSizes.TITLE);
        column.words(
                voice.printing().cutSheet(tasks.size(), plan.story().title().in(voice)), PrintSizes.BODY);
        for (PieceTask task : tasks) {
            column.gap(5).seam().gap(4);
            new CutBlocks(plan, task, voice).blocks(190, 400).forEach(block -> column.picture(block, 0));
        }
        Picture sheet = column.finished(
                voice.printing().pictureCuts(plan.story().title().in(voice)));
        Sketch sketch = new Sketch().place(sheet, new Point(air, air));
        return sketch.finished(sheet.title(), sheet.width() + 2 * air, sheet.height() + 2 * air);
    }
}
