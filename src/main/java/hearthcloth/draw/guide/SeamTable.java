package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All seams of a cloth as a table; the joins of a bar share the row of the seam that sews it on. */
final class SeamTable {

    /** Where the columns begin, as shares of the width: step, what, what wraps, measure, thick. */
    private static final double[] COLUMNS = {0, 0.07, 0.35, 0.465, 0.695};

    private static final double AIR = 2.5;

    private final List<SeamTask> seams;
    private final Voice voice;

    SeamTable(List<SeamTask> seams, Voice voice) {
        this.seams = seams;
        this.voice = voice;
    }

    void flow(Flow flow) {
        flow.lead(row(head(), COLUMNS, flow.width(), PrintSizes.STRONG));
        List<SeamTask> joins = new ArrayList<>();
        for (SeamTask seam : seams) {
            if (seam.step().joinedBar().isPresent() && !isMixed()) {
                joins.add(seam);
            } else {
                flow.add(row(cells(joins, seam), COLUMNS, flow.width(), PrintSizes.BODY));
                joins.clear();
            }
        }
        joins.forEach(join -> flow.add(row(cells(List.of(), join), COLUMNS, flow.width(), PrintSizes.BODY)));
    }

    private List<String> head() {
        PrintingWords words = voice.printing();
        return List.of(
                words.tableStep(), words.tableSew(), words.tableWraps(), words.tableMeasures(), words.tableThick());
    }

    /** What holds for every join, where it holds for every one. */
    Optional<String> joinRule() {
        if (isMixed() || joins().findAny().isEmpty()) {
            return Optional.empty();
        }
        boolean added = joins().allMatch(SeamTable::addedWraps);
        return Optional.of(
                added ? voice.printing().tableNewWraps() : voice.printing().tableOldWraps());
    }

    private Stream<SeamTask> joins() {
        return seams.stream().filter(seam -> seam.step().joinedBar().isPresent());
    }

    /** Whether some joins are wrapped by the new part and some by the earlier one. */
    private boolean isMixed() {
        return joins().anyMatch(SeamTable::addedWraps) && !joins().allMatch(SeamTable::addedWraps);
    }

    private static boolean addedWraps(SeamTask seam) {
        return JoinedSeams.addedWraps(seam.step());
    }

    /** A seam, with the joins of its bar before it. */
    private List<String> cells(List<SeamTask> joins, SeamTask seam) {
        String step = Integer.toString(seam.step().number());
        String what = seam.task().title();
        String measure = measure(seam);
        if (!joins.isEmpty()) {
            step = joins.get(0).step().number() + "–" + step;
            what = voice.printing().tableJoin(Integer.toString(joins.size() + 1), what);
            measure = voice.printing().tableAlone(measure(joins.get(joins.size() - 1)), number(seam));
        }
        return List.of(step, what, seam.glance().wraps(), measure, seam.glance().thick());
    }

    private String measure(SeamTask seam) {
        return seam.task()
                .check()
                .map(Task.Check::size)
                .map(size -> voice.write(size, Rounding.NEAREST))
                .orElse("");
    }

    /** What the work measures, without the unit, since a size with the unit follows. */
    private String number(SeamTask seam) {
        return seam.task()
                .check()
                .map(Task.Check::size)
                .map(size -> voice.number(size.width(), Rounding.NEAREST) + " × "
                        + voice.number(size.height(), Rounding.NEAREST))
                .orElse("");
    }

    /** A row of cells over a line; the columns begin at these shares of the width. */
    static Picture row(List<String> cells, double[] columns, double width, Type type) {
        Sketch sketch = new Sketch();
        double height = 0;
        for (int i = 0; i < columns.length; i++) {
            double from = columns[i] * width;
            double to = i + 1 < columns.length ? columns[i + 1] * width : width + AIR;
            double y = 0.5;
            for (String line : Paragraph.lines(cells.get(i), to - from - AIR, type)) {
                y += type.leading();
                sketch.words(line, new Point(from, y - 1.2), type);
            }
            height = Math.max(height, y + 0.5);
        }
        sketch.line(new Point(0, height), new Point(width, height), Stroke.solid(0.2, Palette.LINE));
        return sketch.finished(cells.get(1), width, height);
    }
}
