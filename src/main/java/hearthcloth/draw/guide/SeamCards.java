package hearthcloth.draw.guide;

import hearthcloth.cloth.Join;
import hearthcloth.cloth.Step;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.SeamTask;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** Every seam after the first as a card: what is particular to it, its picture, what it should measure. */
public final class SeamCards {

    private static final Type TITLE = Type.of(12.5 * Type.POINT, Weight.BOLD, Palette.INK);

    /** The height of a seam's picture, in millimetres. */
    private static final double SEAM = 34;

    /** The height of a seam's picture in a guide of many seams. */
    private static final double OF_MANY = 27;

    private static final int MANY = 24;

    /** The height of a join's picture, in millimetres. */
    private static final double JOIN = 16;

    private final Plan plan;
    private final Voice voice;
    private final Flow flow;
    private double tallest = SEAM;

    public SeamCards(Plan plan, Voice voice, Flow flow) {
        this.plan = plan;
        this.voice = voice;
        this.flow = flow;
    }

    public void flow(List<SeamTask> seams) {
        double width = Cards.width(flow, 2);
        tallest = seams.size() > MANY ? OF_MANY : SEAM;
        Cards.inColumns(
                flow,
                JoinedSeams.of(seams).stream()
                        .map(group -> group.size() == 1 ? card(group.get(0), width) : joins(group, width))
                        .toList());
    }

    private Picture card(SeamTask seam, double width) {
        TextColumn card = new TextColumn(width);
        card.words(seam.step().number() + ". " + seam.task().title(), TITLE).gap(1);
        drawn(card, seam.step(), width);
        card.words(voice.sentences(seam.brief()), PrintSizes.BODY);
        measure(card, seam);
        if (!seam.glance().thick().isEmpty()) {
            double before = card.height();
            card.words(voice.printing().cardThick(seam.glance().thick()), 4, PrintSizes.CARE, Integer.MAX_VALUE);
            double reach = card.height() - before;
            card.draw(0, (sketch, y) -> sketch.fill(new Bounds(1, y - reach + 1, 0.9, reach - 1), Palette.MADDER));
        }
        return card.gap(1.5).finished(seam.task().title());
    }

    /** Joins of one bar that are all sewn alike, on one card: the first in words, the others by name. */
    private Picture joins(List<SeamTask> group, double width) {
        SeamTask first = group.get(0);
        SeamTask last = group.get(group.size() - 1);
        TextColumn card = new TextColumn(width);
        for (SeamTask seam : group) {
            card.words(seam.step().number() + ". " + seam.task().title(), TITLE);
        }
        drawn(card.gap(1), last.step(), width);
        List<String> told = new ArrayList<>(first.brief());
        told.add(voice.printing().cardOthers(group.size() - 1));
        card.words(voice.sentences(told), PrintSizes.BODY);
        measure(card, last);
        return card.gap(1.5).finished(last.task().title());
    }

    /** Draws the seam; a join of an upright bar would be too small to read, and the words tell it. */
    private void drawn(TextColumn card, Step step, double width) {
        boolean joins = step.joinedBar().isPresent();
        if (joins && step.seam().join() == Join.BELOW) {
            return;
        }
        Picture picture = new StepPicture(plan, step, voice).small(width, joins ? JOIN : tallest);
        card.picture(picture, Math.max(0, (width - picture.width()) / 2)).gap(1);
    }

    private void measure(TextColumn card, SeamTask seam) {
        seam.task()
                .check()
                .ifPresent(check -> card.words(
                        voice.printing().cardMeasures(voice.write(check.size(), Rounding.NEAREST)), PrintSizes.STRONG));
    }
}
