package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.CutPicture;
import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.Legend;
import hearthcloth.draw.cloth.PinnedPicture;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Caution;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.tie.Wrapped;
import hearthcloth.wrap.tying.Tying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The guide for a class, four to six pages: picture and needs; pieces; the seam once; a table of all seams; hem, tie and
 * care. A teacher shows the seam; what is peculiar to this cloth is here in full.
 */
public final class ClassGuide {

    private final Plan plan;
    private final Guide guide;
    private final Voice voice;
    private final Ruler ruler;
    private final Flow flow;

    public ClassGuide(Plan plan, Guide guide, Voice voice, Flow flow) {
        this.plan = plan;
        this.guide = guide;
        this.voice = voice;
        this.ruler = voice.ruler();
        this.flow = flow;
    }

    /** The pages, with the tie where the cloth is for a gift. */
    public List<Picture> pages(Optional<Wrapped> gift) {
        Cover cover = new Cover(plan, guide, ruler, flow);
        flow.add(new TextColumn(flow.width())
                .words(plan.story().title(), 0, PrintSizes.TITLE, 2)
                .gap(2)
                .finished(plan.story().title()));
        cover.facesOrFront();
        cover.threadAndTools();
        List<String> before = new ArrayList<>(guide.gather().washing());
        before.addAll(plan.story().cautions());
        list("Before you cut", before);
        pieces();
        seam();
        table();
        hem();
        gift.ifPresent(this::tie);
        care();
        return flow.pages();
    }

    private void pieces() {
        heading("Fabric and pieces");
        paragraph("Each piece with what you cut from it. Sizes are width × length in "
                + (ruler.isMetric() ? "centimetres" : "inches")
                + ": the second number runs along the lengthwise grain.");
        for (Fabric fabric : plan.fabrics()) {
            TextColumn name = new TextColumn(flow.width());
            name.draw(0, (sketch, y) -> Legend.swatch(sketch, new Bounds(0, y + 0.8, 4, 4), fabric.colour()));
            flow.gap(1).lead(name.words(fabric.name(), 6, PrintSizes.STRONG, 1).finished(fabric.name()));
            List<Picture> cards = guide.cutting().stream()
                    .filter(task -> task.cut().piece().fabric().name().equals(fabric.name()))
                    .map(this::piece)
                    .toList();
            Cards.flow(flow, cards, 3, 0.6);
        }
    }

    private Picture piece(PieceTask task) {
        List<String> patches = new ArrayList<>();
        for (CutTree.Kept kept : task.cut().tree().kept()) {
            patches.add(CutPicture.label(kept.patch()) + " " + size(kept.at().size(), Rounding.UP));
        }
        String piece = task.cut().piece().id() + ", " + size(task.cut().piece().size(), Rounding.DOWN) + ": ";
        return new TextColumn(Cards.width(flow, 3))
                .words(piece + String.join("; ", patches), PrintSizes.BODY)
                .finished(task.title());
    }

    private String size(Size size, Rounding rounding) {
        return ruler.number(size.width(), rounding) + " × " + ruler.number(size.height(), rounding);
    }

    private void seam() {
        List<SeamTask> seams = guide.sewing().seams();
        if (seams.isEmpty()) {
            return;
        }
        heading("The seam");
        flow.add(PinnedPicture.of(plan, ruler, flow.width()));
        SeamPicture.of(plan, ruler).ifPresent(section -> flow.gap(3).add(section));
        TaskBlock block = new TaskBlock(flow.width(), ruler);
        flow.part(block.of("1", seams.get(0).task(), Optional.empty()));
        for (String warning : guide.sewing().trial().warnings()) {
            item(warning);
        }
    }

    private void table() {
        List<SeamTask> seams = guide.sewing().seams();
        if (seams.isEmpty()) {
            return;
        }
        heading("All seams, in order");
        SeamTable table = new SeamTable(seams, ruler);
        paragraph(
                "Sew every seam as in step 1. \"The work\" is everything sewn together so far. Sizes are width × height,"
                        + " front up. Slow down at the thick places, or turn the handwheel."
                        + table.joinRule().map(rule -> " " + rule).orElse(""));
        table.flow(flow);
    }

    private void hem() {
        if (guide.hemming().isEmpty()) {
            return;
        }
        heading("Hem");
        flow.add(new HemPicture(plan, ruler).block(flow.width()));
        for (Task task : guide.hemming()) {
            TextColumn column = new TextColumn(flow.width());
            column.words(task.title(), PrintSizes.STRONG).words(String.join(" ", task.lines()), PrintSizes.BODY);
            flow.add(column.gap(1.5).finished(task.title()));
        }
    }

    private void tie(Wrapped wrapped) {
        Tying tying = Tying.of(wrapped.tie(), wrapped.gift(), voice.tying());
        heading("Tie it");
        paragraph(wrapped.sentence(plan.cloth().finished(), voice));
        int number = 1;
        for (Tying.Step step : tying.steps()) {
            flow.add(new TextColumn(flow.width())
                    .item(number++ + ".", 8, step.words(), PrintSizes.BODY)
                    .finished(step.words()));
        }
        if (wrapped.tie().isKnotted()) {
            list("The reef knot", tying.knot());
        }
        list("Take care when you tie it", tying.cautions());
    }

    private void care() {
        list("Washing", guide.notes().washing());
        heading("Take care");
        for (Caution caution : guide.notes().cautions()) {
            item(caution.topic() + ": " + caution.words());
        }
    }

    private void heading(String words) {
        flow.gap(2.5)
                .lead(new TextColumn(flow.width())
                        .words(words, PrintSizes.STEP)
                        .gap(0.8)
                        .finished(words));
    }

    private void list(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            heading(title);
            lines.forEach(this::item);
        }
    }

    private void item(String line) {
        flow.add(new TextColumn(flow.width())
                .item("•", 4, line, PrintSizes.BODY)
                .gap(0.3)
                .finished(line));
    }

    private void paragraph(String words) {
        flow.add(new TextColumn(flow.width())
                .words(words, PrintSizes.BODY)
                .gap(1.5)
                .finished(words));
    }
}
