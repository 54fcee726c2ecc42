package hearthcloth.draw;

import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.guide.Cover;
import hearthcloth.draw.guide.CutBlocks;
import hearthcloth.draw.guide.Flow;
import hearthcloth.draw.guide.TaskBlock;
import hearthcloth.draw.guide.TiedPages;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Caution;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.wrap.tie.Wrapped;
import java.util.List;
import java.util.Optional;

/** The printed guide, from the finished cloth on its first page to the washing on its last. */
final class GuidePages {

    private final Plan plan;
    private final Guide guide;
    private final Ruler ruler;
    private final Flow flow;

    private GuidePages(Plan plan, Guide guide, Ruler ruler, Paper paper) {
        this.plan = plan;
        this.guide = guide;
        this.ruler = ruler;
        this.flow = new Flow(
                paper, plan.story().title() + ", " + ruler.write(plan.cloth().finished(), Rounding.NEAREST));
    }

    static List<Picture> of(Plan plan, Guide guide, Ruler ruler, Paper paper) {
        return of(new PlanFolder(plan, ruler, paper), guide, Optional.empty());
    }

    /** The guide with the gift's pages, where the cloth is for one. */
    static List<Picture> of(PlanFolder proposal, Guide guide, Optional<TiedGift> tied) {
        GuidePages pages = new GuidePages(proposal.plan(), guide, proposal.ruler(), proposal.paper());
        return pages.pages(proposal.gift(), tied);
    }

    private List<Picture> pages(Optional<Wrapped> gift, Optional<TiedGift> tied) {
        new Cover(plan, guide, ruler, flow).flow();
        gather();
        flow.turn();
        cut();
        flow.turn();
        sew();
        hem();
        gift.ifPresent(wrapped -> new TiedPages(plan.cloth(), wrapped, ruler, flow).flow(tied));
        notes();
        return flow.pages();
    }

    private void gather() {
        list("Before you cut", guide.gather().washing());
        list("", guide.gather().before());
        list("Take care", plan.story().cautions());
        list("Chosen for you", plan.story().chosen());
    }

    private void cut() {
        flow.heading("Cut");
        TextColumn how = new TextColumn(flow.width());
        how.words(
                "Cut in the order of the numbers. Each number stands on its cut with the measure; its arrowhead points to the"
                        + " edge to measure from. Hatched parts are left over; cross-hatched ones are lost.",
                PrintSizes.BODY);
        flow.add(how.gap(3).finished("How to cut"));
        List<PieceTask> asTheyAre = plan.cloth().isFree()
                ? guide.cutting().stream().filter(GuidePages::isWhole).toList()
                : List.of();
        list(
                asTheyAre.isEmpty() ? "" : "Used as they are: only pin the slips on",
                asTheyAre.stream()
                        .map(task -> task.title() + " is "
                                + String.join("", task.gives()).replace(", the piece as it is", "") + ".")
                        .toList());
        for (PieceTask task : guide.cutting()) {
            if (asTheyAre.contains(task)) {
                continue;
            }
            List<Picture> blocks = new CutBlocks(plan, task, ruler).blocks(flow.width(), flow.height());
            flow.gap(3);
            double whole = blocks.stream().mapToDouble(Picture::height).sum();
            if (whole > flow.left() && whole <= flow.height()) {
                flow.turn();
            }
            blocks.forEach(flow::add);
        }
    }

    private static boolean isWhole(PieceTask task) {
        return task.lines().isEmpty();
    }

    private void sew() {
        TaskBlock block = new TaskBlock(flow.width(), ruler);
        flow.heading("Sew");
        flow.part(block.of("", guide.sewing().layout(), Optional.empty()));
        flow.part(block.of("", guide.sewing().trial(), Optional.empty()));
        SeamPicture.of(plan, ruler).ifPresent(seam -> flow.gap(4).add(seam));
        for (SeamTask seam : guide.sewing().seams()) {
            Picture picture = new StepPicture(plan, seam.step()).within(block.pictureWidth(), 78);
            flow.part(block.of(Integer.toString(seam.step().number()), seam.task(), Optional.of(picture)));
        }
    }

    private void hem() {
        if (guide.hemming().isEmpty()) {
            return;
        }
        TaskBlock block = new TaskBlock(flow.width(), ruler);
        flow.heading("Hem");
        flow.part(new HemPicture(plan, ruler).block(flow.width()));
        for (Task task : guide.hemming()) {
            flow.part(block.of("", task, Optional.empty()));
        }
    }

    private void notes() {
        list("Where it will be thick", guide.notes().thick());
        list("Washing", guide.notes().washing());
        flow.heading("Take care");
        for (Caution caution : guide.notes().cautions()) {
            TextColumn column = new TextColumn(flow.width());
            column.words(caution.topic(), PrintSizes.STRONG).words(caution.words(), PrintSizes.BODY);
            flow.add(column.gap(2).finished(caution.topic()));
        }
    }

    private void list(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        if (!heading.isEmpty()) {
            flow.heading(heading);
        }
        Type type = PrintSizes.BODY;
        for (String line : lines) {
            flow.add(
                    new TextColumn(flow.width()).item("•", 4, line, type).gap(1).finished(line));
        }
    }
}
