package hearthcloth.cli;

import hearthcloth.cli.io.OutputFolder;
import hearthcloth.cli.option.PrintOptions;
import hearthcloth.draw.PlanFolder;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.wish.GiftWish;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The files of proposals: for whom and on what they are printed, and which are wanted beside the usual ones.
 */
record ProposalFiles(Optional<GiftWish> gift, PrintOptions.Print print, Extras extras) {

    /** Files beside the usual ones. */
    record Extras(boolean slips, boolean png, boolean net) {}

    /** How the maker is spoken to. */
    Voice voice() {
        return print.voice();
    }

    /** The ruler in which measures are written. */
    Ruler ruler() {
        return print.ruler();
    }

    /** Writes a numbered folder for each plan, or nothing. */
    void write(List<Plan> plans, OutputFolder folder) {
        List<OutputFolder.Proposal> files = new ArrayList<>();
        for (Plan plan : plans) {
            PlanFolder drawn =
                    new PlanFolder(plan, print.voice(), print.paper(), gift.map(wish -> wish.wrapped(ruler())));
            files.add(into -> {
                drawn.write(into, print.length());
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
