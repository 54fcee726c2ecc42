package hearthcloth.cli;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.GuideLength;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The files of proposals: for whom and on what they are printed, and which are wanted beside the usual ones.
 *
 * @param voice the language and the ruler they are printed in
 * @param length of the guide
 */
record ProposalFiles(Optional<GiftWish> gift, Paper paper, Voice voice, GuideLength length, Extras extras) {

    /** Files beside the usual ones. */
    record Extras(boolean slips, boolean png, boolean net) {}

    /** The ruler in which measures are written. */
    Ruler ruler() {
        return voice.ruler();
    }

    /** Writes a numbered folder for each plan, or nothing. */
    void write(List<Plan> plans, OutputFolder folder) {
        List<OutputFolder.Proposal> files = new ArrayList<>();
        for (Plan plan : plans) {
            PlanFolder drawn = new PlanFolder(plan, voice, paper, gift.map(wish -> wish.wrapped(ruler())));
            files.add(into -> {
                drawn.write(into, length);
                if (extras.slips()) {
                    drawn.writeSlips(into);
                }
                if (extras.png()) {
                    drawn.writePngs(into);
                }
                if (extras.net()) {
                    drawn.writeNet(into);
                }
            });
        }
        folder.write(files);
    }
}
