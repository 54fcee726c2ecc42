package hearthcloth.draw;

import hearthcloth.draw.cloth.HemPicture;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.cloth.PinnedPicture;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.cloth.SeamPicture;
import hearthcloth.draw.cloth.StepPicture;
import hearthcloth.draw.guide.ClassGuide;
import hearthcloth.draw.guide.ColourPage;
import hearthcloth.draw.guide.Cover;
import hearthcloth.draw.guide.CutCells;
import hearthcloth.draw.guide.Flow;
import hearthcloth.draw.guide.PatchSlips;
import hearthcloth.draw.guide.SeamCards;
import hearthcloth.draw.guide.TaskBlock;
import hearthcloth.draw.guide.TiedPages;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Caution;
import hearthcloth.sew.Guide;
import hearthcloth.sew.SeamTask;
import hearthcloth.sew.Task;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.tie.Wrapped;
import java.util.List;
import java.util.Optional;

/** The printed guide, from the finished cloth on its first page to the washing on its last. */
final class GuidePages {

    private final Plan plan;
    private final Guide guide;
    private final Voice voice;
    private final Flow flow;
    private final PrintingWords words;

    private GuidePages(Plan plan, Guide guide, Voice voice, Paper paper) {
        this.plan = plan;
        this.guide = guide;
        this.voice = voice;
        this.flow = new Flow(
                paper,
                plan.story().title().in(voice) + ", " + voice.write(plan.cloth().finished(), Rounding.NEAREST),
                voice.printing());
        this.words = voice.printing();
    }

    /** The guide for a class. */
    static List<Picture> forClass(PlanSheets proposal, Guide guide) {
        GuidePages pages = new GuidePages(proposal.plan(), guide, proposal.voice(), proposal.paper());
        return new ClassGuide(proposal.plan(), guide, proposal.voice(), pages.flow).pages(proposal.gift());
    }

    /** A slip for every patch. */
    static List<Picture> slips(PlanSheets proposal) {
        Flow flow = new Flow(
                proposal.paper(),
                slipsTitle(proposal.plan(), proposal.voice()),
                proposal.voice().printing());
        return PatchSlips.pages(proposal.plan(), proposal.voice(), flow);
    }

    static String slipsTitle(Plan plan, Voice voice) {
        return voice.printing().slipsRunning(plan.story().title().in(voice));
    }

    /** The guide with the gift's pages, where the cloth is for one. */
    static List<Picture> of(PlanSheets proposal, Guide guide, Optional<TiedGift> tied) {
        GuidePages pages = new GuidePages(proposal.plan(), guide, proposal.voice(), proposal.paper());
        return pages.pages(proposal.gift(), tied);
    }

    private List<Picture> pages(Optional<Wrapped> gift, Optional<TiedGift> tied) {
        new Cover(plan, guide, voice, flow).flow();
        gather();
        cut();
        sew();
        hem();
        gift.ifPresent(wrapped -> new TiedPages(plan.cloth(), wrapped, voice, flow).flow(tied));
        new ColourPage(plan, voice, flow).flow();
        notes();
        return flow.pages();
    }

    private void gather() {
        list(words.beforeTitle(), guide.gather().washing());
        list("", guide.gather().before());
        list(words.careTitle(), said(plan.story().cautions()));
        list(words.chosenTitle(), said(plan.story().chosen()));
    }

    private List<String> said(List<Sentence> sentences) {
        return sentences.stream().map(one -> one.in(voice)).toList();
    }

    private void cut() {
        flow.heading(words.cutTitle());
        TextColumn how = new TextColumn(flow.width());
        how.words(words.cutHow(), PrintSizes.BODY);
        flow.add(how.gap(3).finished(words.cutTitle()));
        new CutCells(plan, voice, flow).flow(guide.cutting());
    }

    private void sew() {
        TaskBlock block = new TaskBlock(flow.width(), voice);
        flow.heading(words.sewTitle());
        block.flow(flow, guide.sewing().layout());
        block.flow(flow, guide.sewing().trial());
        List<SeamTask> seams = guide.sewing().seams();
        if (seams.isEmpty()) {
            return;
        }
        flow.gap(3).add(PinnedPicture.of(plan, voice, flow.width()));
        SeamPicture.of(plan, voice).ifPresent(seam -> flow.gap(3).add(seam));
        Picture picture = new StepPicture(plan, seams.get(0).step(), voice).within(block.pictureWidth(), 78);
        flow.part(block.of("1", seams.get(0).task(), Optional.of(picture)));
        new SeamCards(plan, voice, flow).flow(seams.subList(1, seams.size()));
    }

    private void hem() {
        if (guide.hemming().isEmpty()) {
            return;
        }
        TaskBlock block = new TaskBlock(flow.width(), voice);
        flow.heading(words.hemTitle());
        flow.part(new HemPicture(plan, voice).block(flow.width()));
        for (Task task : guide.hemming()) {
            block.flow(flow, task);
        }
    }

    private void notes() {
        list(words.thickTitle(), guide.notes().thick());
        list(words.washingTitle(), guide.notes().washing());
        flow.heading(words.careTitle());
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
