package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.Legend;
import hearthcloth.draw.cloth.PatchName;
import hearthcloth.draw.cloth.PinnedPicture;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Caution;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.stash.Fabric;
import hearthcloth.words.printing.PrintingWords;
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
    private final Flow flow;
    private final PrintingWords words;

    public ClassGuide(Plan plan, Guide guide, Voice voice, Flow flow) {
        this.plan = plan;
        this.guide = guide;
        this.voice = voice;
        this.flow = flow;
        this.words = voice.printing();
    }

    /** The pages, with the tie where the cloth is for a gift. */
    public List<Picture> pages(Optional<Wrapped> gift) {
        Cover cover = new Cover(plan, guide, voice, flow);
        flow.add(new TextColumn(flow.width())
                .words(plan.story().title().in(voice), 0, PrintSizes.TITLE, 2)
                .gap(2)
                .finished(plan.story().title().in(voice)));
        cover.facesOrFront();
        cover.threadAndTools();
        List<String> before = new ArrayList<>(guide.gather().washing());
        plan.story().cautions().forEach(caution -> before.add(caution.in(voice)));
        list(words.beforeTitle(), before);
        pieces();
        seam();
        table();
        hem();
        gift.ifPresent(this::tie);
        care();
        return flow.pages();
    }

    private void pieces() {
        heading(words.piecesTitle());
        paragraph(words.piecesHow(voice.ruler().isMetric() ? "metric" : "inches"));
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
            patches.add(PatchName.of(kept.patch(), voice) + " " + size(kept.at().size(), Rounding.UP));
        }
        String piece = task.cut().piece().id() + ", " + size(task.cut().piece().size(), Rounding.DOWN);
        String told = task.cut().past() ? words.piecesDone(piece) : piece;
        return new TextColumn(Cards.width(flow, 3))
                .words(patches.isEmpty() ? told : told + ": " + String.join("; ", patches), PrintSizes.BODY)
                .finished(task.title());
    }

    private String size(Size size, Rounding rounding) {
        return voice.number(size.width(), rounding) + " × " + voice.number(size.height(), rounding);
    }

    private void seam() {
        List<SeamTask> seams = guide.sewing().seams();
        if (seams.isEmpty()) {
            return;
        }
        heading(words.seamTitle());
        flow.add(PinnedPicture.of(plan, voice, flow.width()));
        SeamPicture.of(plan, voice).ifPresent(section -> flow.gap(3).add(section));
        TaskBlock block = new TaskBlock(flow.width(), voice);
        Task first = seams.get(0).task();
        block.flow(flow, "1.  " + first.title(), first);
        for (String warning : guide.sewing().trial().warnings()) {
            item(warning);
        }
    }

    private void table() {
        List<SeamTask> seams = guide.sewing().seams();
        if (seams.isEmpty()) {
            return;
        }
        heading(words.tableTitle());
        SeamTable table = new SeamTable(seams, voice);
        paragraph(voice.sentences(List.of(words.tableHow(), table.joinRule().orElse(""))));
        table.flow(flow);
    }

    private void hem() {
        if (guide.hemming().isEmpty()) {
            return;
        }
        heading(words.hemTitle());
        flow.add(new HemPicture(plan, voice).block(flow.width()));
        for (Task task : guide.hemming()) {
            TextColumn column = new TextColumn(flow.width());
            column.words(task.title(), PrintSizes.STRONG).words(voice.sentences(task.lines()), PrintSizes.BODY);
            flow.add(column.gap(1.5).finished(task.title()));
        }
    }

    private void tie(Wrapped wrapped) {
        Tying tying = Tying.of(wrapped.tie(), wrapped.gift(), voice.tying());
        heading(words.tieTitle());
        paragraph(wrapped.sentence(plan.cloth().finished(), voice));
        int number = 1;
        for (Tying.Step step : tying.steps()) {
            flow.add(new TextColumn(flow.width())
                    .item(number++ + ".", 8, step.words(), PrintSizes.BODY)
                    .finished(step.words()));
        }
        if (wrapped.tie().isKnotted()) {
            list(words.tieKnot(), tying.knot());
        }
        list(words.tieCare(), tying.cautions());
    }

    private void care() {
        list(words.washingTitle(), guide.notes().washing());
        heading(words.careTitle());
        for (Caution caution : guide.notes().cautions()) {
            item(words.item(caution.topic(), caution.words()));
        }
    }

    private void heading(String title) {
        flow.gap(2.5)
                .lead(new TextColumn(flow.width())
                        .words(title, PrintSizes.STEP)
                        .gap(0.8)
                        .finished(title));
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

    private void paragraph(String told) {
        flow.add(new TextColumn(flow.width())
                .words(told, PrintSizes.BODY)
                .gap(1.5)
                .finished(told));
    }
}
