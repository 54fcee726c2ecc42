package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.CutPicture;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.ScaledPicture;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.PieceTask;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces to cut, in three groups: those used whole as a list without drawings, those with few cuts as small cells,
 * twelve to a page, and the others as blocks of their own.
 */
public final class CutCells {

    private static final int COLUMNS = 3;

    /** More cuts than this are told in sentences. */
    private static final int FEW = 6;

    /** The height of a drawing in a cell, in millimetres. */
    private static final double DRAWN = 36;

    private static final Type TITLE = Type.of(11 * Type.POINT, Weight.BOLD, Palette.INK);

    private final Plan plan;
    private final Voice voice;
    private final Flow flow;

    public CutCells(Plan plan, Voice voice, Flow flow) {
        this.plan = plan;
        this.voice = voice;
        this.flow = flow;
    }

    public void flow(List<PieceTask> tasks) {
        List<Picture> whole = new ArrayList<>();
        List<Picture> cells = new ArrayList<>();
        List<PieceTask> large = new ArrayList<>();
        double width = Cards.width(flow, COLUMNS);
        for (PieceTask task : tasks) {
            if (task.lines().isEmpty()) {
                whole.add(whole(task, Cards.width(flow, 2)));
                continue;
            }
            ScaledPicture drawn = new CutPicture(plan, task, voice).small(width, DRAWN);
            if (task.lines().size() <= FEW && drawn.excess(width, DRAWN) <= 0) {
                cells.add(cell(task, drawn.picture(), width));
            } else {
                large.add(task);
            }
        }
        if (!whole.isEmpty()) {
            flow.gap(3)
                    .add(new TextColumn(flow.width())
                            .words(voice.printing().cutWhole(), PrintSizes.STEP)
                            .part());
            Cards.flow(flow, whole, 2);
        }
        Cards.flow(flow, cells, COLUMNS);
        large.forEach(this::block);
    }

    private void block(PieceTask task) {
        List<Picture> blocks = new CutBlocks(plan, task, voice).blocks(flow.width(), flow.height());
        flow.gap(4);
        double whole = blocks.stream().mapToDouble(Picture::height).sum();
        if (whole > flow.left() && whole <= flow.height()) {
            flow.turn();
        }
        blocks.forEach(flow::add);
    }

    private static Picture whole(PieceTask task, double width) {
        TextColumn row = new TextColumn(width).words(task.title(), TITLE);
        return ticks(row, task).finished(task.title());
    }

    private static Picture cell(PieceTask task, Picture drawn, double width) {
        TextColumn cell = new TextColumn(width).words(task.title(), TITLE).gap(0.6);
        cell.picture(drawn, Math.max(0, (width - drawn.width()) / 2)).gap(0.6);
        return ticks(cell, task).finished(task.title());
    }

    private static TextColumn ticks(TextColumn column, PieceTask task) {
        for (String words : task.gives()) {
            column.draw(
                    0, (sketch, y) -> sketch.outline(new Bounds(0.6, y + 0.9, 3, 3), Stroke.solid(0.3, Palette.INK)));
            column.words(words, 5.5, PrintSizes.BODY, Integer.MAX_VALUE);
        }
        return column;
    }
}
