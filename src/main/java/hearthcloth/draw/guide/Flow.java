package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.words.printing.PrintingWords;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills pages with blocks that are never divided; a heading stays with the block after it. Every page carries the
 * cloth's name and its own number. Not thread-safe; used within one method.
 */
public final class Flow {

    static final double MARGIN = 15;

    private static final double TOP = 22;
    private static final double FOOT = 11;
    private static final Type RUNNING = Type.of(11 * Type.POINT, Weight.SEMIBOLD, Palette.SECOND_INK);

    private final Paper paper;
    private final String running;
    private final PrintingWords words;
    private final List<Sketch> pages = new ArrayList<>();
    private final List<Picture> waiting = new ArrayList<>();
    private double y;

    public Flow(Paper paper, String running, PrintingWords words) {
        this.paper = paper;
        this.words = words;
        this.running = running;
        turn();
    }

    public double width() {
        return paper.width() - 2 * MARGIN;
    }

    /** The height of a page between header and foot. */
    public double height() {
        return paper.height() - TOP - FOOT;
    }

    /** The height left on this page, in millimetres. */
    public double left() {
        double kept = waiting.stream().mapToDouble(Picture::height).sum();
        return paper.height() - FOOT - y - kept;
    }

    /** Begins a new page, unless this one is still empty. */
    public Flow turn() {
        if (pages.isEmpty() || y > TOP) {
            pages.add(new Sketch());
            y = TOP;
        }
        return this;
    }

    public Flow gap(double millimetres) {
        if (y > TOP && waiting.isEmpty()) {
            y += millimetres;
        }
        return this;
    }

    /** Adds a heading that stays on the page of the next block. */
    public Flow heading(String text) {
        gap(5);
        waiting.add(
                new TextColumn(width()).words(text, PrintSizes.HEADING).gap(2.5).finished(text));
        return this;
    }

    /** Adds a small block that stays on the page of the next one. */
    Flow lead(Picture block) {
        waiting.add(block);
        return this;
    }

    /** Adds a block; it begins a new page where this one has no room for it. */
    public Flow add(Picture block) {
        if (block.height() > left() + 0.01) {
            turn();
        }
        waiting.forEach(this::put);
        waiting.clear();
        put(block);
        return this;
    }

    /** Adds a block under a divider, which is left out at the head of a page. */
    public Flow part(Picture block) {
        Picture divider = new TextColumn(width()).gap(3).seam().gap(2.5).finished("");
        if (y > TOP && waiting.isEmpty() && divider.height() + block.height() <= left()) {
            put(divider);
        } else if (y > TOP && waiting.isEmpty()) {
            turn();
        }
        return add(block);
    }

    private void put(Picture block) {
        pages.get(pages.size() - 1).place(block, new Point(MARGIN, y));
        y += block.height();
    }

    public List<Picture> pages() {
        List<Picture> finished = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Sketch page = new Sketch();
            String number = words.page(Integer.toString(pages.size()), Integer.toString(i + 1));
            Point left = new Point(MARGIN, 13);
            page.words(Paragraph.cut(running, width() - 40, RUNNING), left, RUNNING);
            page.words(number, new Point(paper.width() - MARGIN, 13), RUNNING.at(Type.Anchor.END));
            TextColumn.seam(page, MARGIN, paper.width() - MARGIN, 15.5);
            pages.get(i).marks().forEach(page::add);
            finished.add(page.finished(number, paper.width(), paper.height()));
        }
        return List.copyOf(finished);
    }
}
