package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.sew.Task;
import hearthcloth.words.speech.Voice;
import java.util.Optional;

/** One task as a block: its title, what to do, the picture on the left, the number to check in a box. */
public final class TaskBlock {

    private static final double PICTURE = 0.42;
    private static final double BETWEEN = 6;

    private final double width;
    private final Voice voice;

    public TaskBlock(double width, Voice voice) {
        this.width = width;
        this.voice = voice;
    }

    /** The width for a picture beside the words, in millimetres. */
    public double pictureWidth() {
        return width * PICTURE;
    }

    /**
     * The block.
     *
     * @param number in front of the title; may be empty
     */
    public Picture of(String number, Task task, Optional<Picture> picture) {
        TextColumn block = new TextColumn(width);
        String title = number.isEmpty() ? task.title() : number + ".  " + task.title();
        block.words(title, PrintSizes.STEP).gap(2);
        if (picture.isEmpty()) {
            block.picture(words(task, width), 0);
            task.check().ifPresent(check -> block.gap(2).picture(box(check, pictureWidth()), 0));
            return block.gap(1).finished(task.title());
        }
        TextColumn left = new TextColumn(pictureWidth());
        picture.ifPresent(drawn -> left.picture(drawn, (pictureWidth() - drawn.width()) / 2));
        task.check().ifPresent(check -> left.gap(4).picture(box(check, pictureWidth()), 0));
        double from = pictureWidth() + BETWEEN;
        Picture words = words(task, width - from);
        Picture seen = left.finished(task.title());
        block.draw(
                Math.max(words.height(), seen.height()),
                (sketch, y) -> sketch.place(seen, new Point(0, y)).place(words, new Point(from, y)));
        return block.gap(1).finished(task.title());
    }

    /** Adds a task without a number or a picture, line after line, so that it may go on on the next page. */
    public void flow(Flow flow, Task task) {
        flow(flow, task.title(), task);
    }

    /** The same under a title of its own. */
    void flow(Flow flow, String title, Task task) {
        int number = 1;
        for (String line : task.lines()) {
            TextColumn one = new TextColumn(width);
            if (number == 1) {
                one.words(title, PrintSizes.STEP).gap(2);
            }
            Picture said = one.item(Integer.toString(number), 6, line, PrintSizes.BODY)
                    .gap(0.5)
                    .finished(line);
            if (number++ == 1) {
                flow.part(said);
            } else {
                flow.add(said);
            }
        }
        for (String warning : task.warnings()) {
            TextColumn one = new TextColumn(width);
            warn(one, warning);
            flow.add(one.finished(warning));
        }
        task.check().ifPresent(check -> flow.gap(2).add(box(check, pictureWidth())));
    }

    private static void warn(TextColumn words, String warning) {
        words.gap(0.6);
        double before = words.height();
        words.words(warning, 6, PrintSizes.CARE, Integer.MAX_VALUE);
        double reach = words.height() - before;
        words.draw(0, (sketch, y) -> sketch.fill(new Bounds(2, y - reach + 1, 0.9, reach - 1), Palette.MADDER));
        words.gap(0.8);
    }

    private Picture words(Task task, double across) {
        TextColumn words = new TextColumn(across);
        int number = 1;
        for (String line : task.lines()) {
            words.item(Integer.toString(number++), 6, line, PrintSizes.BODY).gap(0.5);
        }
        task.warnings().forEach(warning -> warn(words, warning));
        return words.finished(task.title());
    }

    /** The number to check, in large type on a tint of the accent colour. */
    private Picture box(Task.Check check, double across) {
        String measure = voice.write(check.size(), Rounding.NEAREST);
        Type figure = PrintSizes.FIGURE;
        while (figure.width(measure) > across - 8) {
            figure = figure.sized(figure.size() * 0.95);
        }
        TextColumn inside = new TextColumn(across - 8);
        inside.words(voice.printing().boxMeasure(), PrintSizes.SMALL);
        inside.words(measure, figure);
        inside.words(voice.printing().boxWay(), PrintSizes.SMALL);
        Picture words = inside.finished(check.sentence());
        Bounds card = new Bounds(0, 0, across, words.height() + 4.5);
        return new Sketch()
                .add(new Mark.Area(card.rounded(2.5), Palette.WASH))
                .place(words, new Point(4, 2))
                .finished(check.sentence(), across, card.height());
    }
}
