package hearthcloth.draw;

import hearthcloth.draw.picture.Column;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.geometry.Point;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Type;
import hearthcloth.draw.picture.Weight;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills pages with blocks, none of which is ever parted; a heading stays with the block after it. Every page carries the
 * cloth's name and its own number. Not thread-safe; belongs to one method.
 */
final class Flow {

    static final double MARGIN = 15;

    private static final double TOP = 22;
    private static final double FOOT = 11;
    private static final Type RUNNING = Type.of(11 * Type.POINT, Weight.SEMIBOLD, Palette.SECOND_INK);

    private final Paper paper;
    private final String running;
    private final List<Sketch> pages = new ArrayList<>();
    private final List<Picture> waiting = new ArrayList<>();
    private double y;

    Flow(Paper paper, String running) {
        this.paper = paper;
        this.running = running;
        turn();
    }

    double width() {
        return paper.width() - 2 * MARGIN;
    }

    /** The height of a page between header and foot. */
    double height() {
        return paper.height() - TOP - FOOT;
    }

    /** What is left of this page. */
    double left() {
        double kept = waiting.stream().mapToDouble(Picture::height).sum();
        return paper.height() - FOOT - y - kept;
    }

    /** Begins a new page, unless this one is still empty. */
    Flow turn() {
        if (pages.isEmpty() || y > TOP) {
            pages.add(new Sketch());
            y = TOP;
        }
        return this;
    }

    Flow gap(double millimetres) {
        if (y > TOP && waiting.isEmpty()) {
            y += millimetres;
        }
        return this;
    }

    /** A heading that stays on the page of the next block. */
    Flow heading(String text) {
        gap(5);
        waiting.add(new Column(width()).words(text, Print.HEADING).gap(2.5).finished(text));
        return this;
    }

    /** A block; it begins a new page where this one has no room for it. */
    Flow add(Picture block) {
        if (block.height() > left() + 0.01) {
            turn();
        }
        waiting.forEach(this::put);
        waiting.clear();
        put(block);
        return this;
    }

    /** A block under a divider, which is left out at the head of a page. */
    Flow part(Picture block) {
        Picture divider = new Column(width()).gap(3).seam().gap(2.5).finished("");
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

    List<Picture> pages() {
        List<Picture> finished = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Sketch page = new Sketch();
            String number = "page " + (i + 1) + " of " + pages.size();
            Point left = new Point(MARGIN, 13);
            page.words(Paragraph.cut(running, width() - 40, RUNNING), left, RUNNING);
            page.words(number, new Point(paper.width() - MARGIN, 13), RUNNING.at(Type.Anchor.END));
            Column.seam(page, MARGIN, paper.width() - MARGIN, 15.5);
            pages.get(i).marks().forEach(page::add);
            finished.add(page.finished(number, paper.width(), paper.height()));
        }
        return List.copyOf(finished);
    }
}
